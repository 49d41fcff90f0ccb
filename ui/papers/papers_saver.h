/* The end of the papers' foot: says what has been done, and while files are written shows how far that is,
 * with a button to stop it.
 *
 * Signals
 *   busy   ()   writing has begun or ended
 *   saved  ()   all is written
 *
 * Action
 *   saver.stop
 */
#pragma once

#include <gtk/gtk.h>

#include "papers_job.h"

#define RW_TYPE_PAPERS_SAVER (rw_papers_saver_get_type ())
G_DECLARE_FINAL_TYPE (RwPapersSaver, rw_papers_saver, RW, PAPERS_SAVER, GtkBox)

GtkWidget *rw_papers_saver_new (void);

void     rw_papers_saver_say     (RwPapersSaver *self, const char *text);
gboolean rw_papers_saver_is_busy (RwPapersSaver *self);

/* Writes a FILE or FOLDER; does nothing while it is busy.  What goes wrong is told in a dialog. */
void rw_papers_saver_start (RwPapersSaver         *self,
                            const RwProject       *project,
                            const RwPapersOptions *options,
                            RwPapersTask           task,
                            const char            *path);
