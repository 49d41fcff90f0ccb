/* What a frame costs, for measurements: where RIMWRIGHT_TRACE names a file, one CSV line for each frame of a
 * window, with what its canvases say in between.  Without it nothing is done.
 *
 *   frame,NUMBER,WALL,CPU,EVENTS,LAYOUT,PAINT  from the frame's first event handler to painted, on the clock
 *                                              and as processor time of this thread, and the parts of the
 *                                              latter; microseconds
 *   grip,VIEW,ID,X,Y                           where a grip stands, pixels from the canvas' corner
 */
#pragma once

#include <gtk/gtk.h>

/* Traces the frames of the window that a realized widget is in. */
void     rw_frame_trace_follow  (GtkWidget *widget);
gboolean rw_frame_trace_is_on   (void);
void     rw_frame_trace_say     (const char *format, ...) G_GNUC_PRINTF (1, 2);
