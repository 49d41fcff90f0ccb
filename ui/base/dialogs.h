/* Dialogs: files, folders, questions, messages.  The only place that opens one, so that the toolkit's next
 * way of doing so touches this file alone.  None of them blocks: the answer comes through a callback. */
#pragma once

#include <gtk/gtk.h>

/* path is NULL where the maker went back. */
typedef void (*RwPathFunc) (const char *path, gpointer user_data);

void rw_dialog_open   (GtkWindow *parent, RwPathFunc done, gpointer user_data);
/* Any file under a title. */
void rw_dialog_open_any (GtkWindow *parent, const char *title, RwPathFunc done, gpointer user_data);
/* suggestion: a file's name without folder, or the whole path of the present file. */
void rw_dialog_save   (GtkWindow *parent, const char *suggestion, RwPathFunc done, gpointer user_data);
/* Any file under a title; suggestion is its name. */
void rw_dialog_save_as (GtkWindow *parent, const char *title, const char *suggestion, RwPathFunc done,
                        gpointer user_data);
/* suggestion: the name of a PDF. */
void rw_dialog_save_pdf (GtkWindow *parent, const char *suggestion, RwPathFunc done, gpointer user_data);

/* A folder that there is. */
void rw_dialog_folder (GtkWindow *parent, const char *title, RwPathFunc done, gpointer user_data);

typedef enum
{
  RW_REPLY_STAY,  /* go back, change nothing */
  RW_REPLY_OTHER, /* the way that gives something up */
  RW_REPLY_GO,    /* the way that is safe, and what Return does */
} RwReply;

typedef void (*RwReplyFunc) (RwReply reply, gpointer user_data);

/* A question with three answers; all words translated, with mnemonics in those of the buttons. */
typedef struct
{
  const char *title;
  const char *question;
  const char *details;
  const char *stay, *other, *go;
} RwQuestion;

void rw_dialog_ask (GtkWindow *parent, const RwQuestion *question, RwReplyFunc done, gpointer user_data);

/* text is NULL where the maker went back. */
typedef void (*RwTextFunc) (const char *text, gpointer user_data);

void rw_dialog_text (GtkWindow *parent, const char *title, const char *text, RwTextFunc done,
                     gpointer user_data);

void rw_dialog_error (GtkWindow *parent, const char *what, const char *why);
