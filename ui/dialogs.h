/* Dialogs: files, folders, questions, messages.  The only place that opens one, so that the toolkit's next
 * way of doing so touches this file alone.  None of them blocks: the answer comes through a callback. */
#pragma once

#include <gtk/gtk.h>

/* path is NULL where the maker went back. */
typedef void (*RwPathFunc) (const char *path, gpointer user_data);

void rw_dialog_open   (GtkWindow *parent, RwPathFunc done, gpointer user_data);
/* suggestion: a file's name without folder, or the whole path of the present file. */
void rw_dialog_save   (GtkWindow *parent, const char *suggestion, RwPathFunc done, gpointer user_data);
/* suggestion: the name of a PDF. */
void rw_dialog_save_pdf (GtkWindow *parent, const char *suggestion, RwPathFunc done, gpointer user_data);

typedef enum
{
  RW_ANSWER_STAY,    /* go back, change nothing */
  RW_ANSWER_DISCARD, /* go on without saving */
  RW_ANSWER_SAVE,
} RwAnswer;

typedef void (*RwAnswerFunc) (RwAnswer answer, gpointer user_data);

/* Asks what is to become of unsaved work. */
void rw_dialog_unsaved (GtkWindow *parent, const char *name, RwAnswerFunc done, gpointer user_data);

/* text is NULL where the maker went back. */
typedef void (*RwTextFunc) (const char *text, gpointer user_data);

void rw_dialog_text (GtkWindow *parent, const char *title, const char *text, RwTextFunc done,
                     gpointer user_data);

void rw_dialog_error (GtkWindow *parent, const char *what, const char *why);
