/* The window's inside, for window*.c only. */
#pragma once

#include "canvas/sheet_pane.h"
#include "document/draft_keeper.h"
#include "drawer/drawer.h"
#include "form/form.h"
#include "foot.h"
#include "memory.h"
#include "window.h"

struct _RwWindow
{
  GtkApplicationWindow parent;

  RwDocument    *document;
  RwDraftKeeper *drafts;
  RwMemory       memory;

  GtkWidget *title, *saved; /* in the header */
  GtkWidget *undo, *redo;
  GtkWidget *form;
  GtkWidget *form_pane;   /* form | the rest */
  GtkWidget *sheets;      /* one sheet | another beside it */
  GtkWidget *drawer_pane; /* sheets over the drawer */
  GtkWidget *drawer;
  GtkWidget *foot;
  GMenu     *recent;      /* once the menu has been opened */
  GtkWidget *papers;      /* the window of the papers while it is open */
  GtkWidget *guide, *keys; /* likewise */

  char        *wanted;  /* the recent file asked for */
  RwWindowFunc go_on;   /* after a question about unsaved work */
  gboolean     leaving; /* the question has been answered */
};

/* window_header.c */
void rw_window_build_header   (RwWindow *self);
void rw_window_refresh_header (RwWindow *self);

/* window_actions.c */
void rw_window_add_actions     (RwWindow *self);
void rw_window_refresh_actions (RwWindow *self);
void rw_window_start_tour      (RwWindow *self);

/* window_files.c */
void rw_window_add_file_actions (RwWindow *self);
void rw_window_save             (RwWindow *self);
void rw_window_fill_recent      (RwWindow *self);

/* window.c */
void rw_window_show_beside (RwWindow *self, gboolean shown);
