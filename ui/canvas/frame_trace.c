#include "frame_trace.h"

#include <stdio.h>
#include <time.h>

#define FOLLOWED "rw-frame-trace"

typedef struct
{
  gint64 event;  /* the first since the last frame; 0: none */
  gint64 before; /* before-paint */
  gint64 event_cpu, before_cpu, layout_cpu;
} Frame;

/* Time that this thread has had on a processor, in microseconds: what else the machine does is not in it. */
static gint64
cpu_time (void)
{
  struct timespec now;

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &now);
  return now.tv_sec * G_USEC_PER_SEC + now.tv_nsec / 1000;
}

gboolean
rw_frame_trace_is_on (void)
{
  return g_getenv ("RIMWRIGHT_TRACE") != NULL;
}

/* Opened for each line, so that whoever reads along finds it complete. */
void
rw_frame_trace_say (const char *format, ...)
{
  FILE *file = fopen (g_getenv ("RIMWRIGHT_TRACE"), "a");
  va_list args;

  if (file == NULL)
    return;
  va_start (args, format);
  vfprintf (file, format, args);
  va_end (args);
  fclose (file);
}

static gboolean
on_event (GtkEventControllerLegacy *controller, GdkEvent *event, gpointer data)
{
  Frame *frame = data;

  if (frame->event == 0)
    {
      frame->event = g_get_monotonic_time ();
      frame->event_cpu = cpu_time ();
    }
  return GDK_EVENT_PROPAGATE;
}

static void
on_before_paint (GtkWidget *window)
{
  Frame *frame = g_object_get_data (G_OBJECT (window), FOLLOWED);

  frame->before = g_get_monotonic_time ();
  frame->before_cpu = frame->layout_cpu = cpu_time (); /* there may be nothing to lay out */
}

static void
on_layout (GtkWidget *window)
{
  ((Frame *) g_object_get_data (G_OBJECT (window), FOLLOWED))->layout_cpu = cpu_time ();
}

static void
on_after_paint (GtkWidget *window, GdkFrameClock *clock)
{
  Frame *frame = g_object_get_data (G_OBJECT (window), FOLLOWED);
  gboolean idle = frame->event == 0;
  gint64 now = g_get_monotonic_time (), cpu = cpu_time ();
  gint64 start = idle ? frame->before : frame->event, start_cpu = idle ? frame->before_cpu : frame->event_cpu;

  frame->event = 0;
  rw_frame_trace_say ("frame,%" G_GINT64_FORMAT ",%" G_GINT64_FORMAT ",%" G_GINT64_FORMAT
                      ",%" G_GINT64_FORMAT ",%" G_GINT64_FORMAT ",%" G_GINT64_FORMAT "\n",
                      gdk_frame_clock_get_frame_counter (clock), now - start, cpu - start_cpu,
                      frame->before_cpu - start_cpu, frame->layout_cpu - frame->before_cpu,
                      cpu - frame->layout_cpu);
}

void
rw_frame_trace_follow (GtkWidget *widget)
{
  GtkWidget *window = GTK_WIDGET (gtk_widget_get_root (widget));
  GdkFrameClock *clock = gtk_widget_get_frame_clock (widget);
  GtkEventController *controller;
  Frame *frame;

  if (!rw_frame_trace_is_on () || window == NULL || g_object_get_data (G_OBJECT (window), FOLLOWED) != NULL)
    return;
  frame = g_new0 (Frame, 1);
  g_object_set_data_full (G_OBJECT (window), FOLLOWED, frame, g_free);
  controller = gtk_event_controller_legacy_new ();
  gtk_event_controller_set_propagation_phase (controller, GTK_PHASE_CAPTURE);
  g_signal_connect (controller, "event", G_CALLBACK (on_event), frame);
  gtk_widget_add_controller (window, controller);
  g_signal_connect_object (clock, "before-paint", G_CALLBACK (on_before_paint), window, G_CONNECT_SWAPPED);
  g_signal_connect_object (clock, "layout", G_CALLBACK (on_layout), window, G_CONNECT_SWAPPED | G_CONNECT_AFTER);
  g_signal_connect_object (clock, "after-paint", G_CALLBACK (on_after_paint), window, G_CONNECT_SWAPPED);
}
