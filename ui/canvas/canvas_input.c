#include "canvas_private.h"

#include <math.h>

/* Pixels. */
#define REACH_GRIP 10.0
#define REACH_LINE 4.0
#define CLICK_SLOP 4.0 /* a press that goes farther is no click */

#define WHEEL_FACTOR 1.15 /* for one notch */

static int
device_scale (RwCanvas *self)
{
  return gtk_widget_get_scale_factor (GTK_WIDGET (self));
}

/* ---- what is under the pointer ---- */

static const RwGrip *
grip_near (RwCanvas *self, RwPoint pointer)
{
  const RwGrip *nearest = NULL;
  double least = REACH_GRIP;
  RwPoint at;

  for (int i = 0; i < rw_grips_count; i++)
    if (rw_canvas_grip_at (self, &rw_grips[i], &at) && hypot (at.x - pointer.x, at.y - pointer.y) < least)
      {
        least = hypot (at.x - pointer.x, at.y - pointer.y);
        nearest = &rw_grips[i];
      }
  return nearest;
}

/* The figure at a point of the screen; -1: none. */
static int
text_at (RwCanvas *self, RwPoint pointer)
{
  return rw_layout_text_at (rw_canvas_layout (self), (pointer.x - self->place.x) / RW_PX_PER_PAPER_MM,
                            (self->place.y - pointer.y) / RW_PX_PER_PAPER_MM, 0);
}

static int
item_at (RwCanvas *self, RwPoint pointer)
{
  RwPoint sheet = rw_canvas_view_to_sheet (&self->place, pointer);
  int text = text_at (self, pointer);

  if (text >= 0)
    return g_array_index (rw_canvas_layout (self)->texts, RwPlacedText, text).item;
  return rw_sheet_pick (rw_canvas_sheet (self), sheet.x, sheet.y, REACH_LINE / self->place.zoom);
}

static void
set_cursor (RwCanvas *self, const char *name)
{
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), name);
}

static void
look_under_pointer (RwCanvas *self)
{
  const RwGrip *grip;
  int item;

  if (self->drag != NULL)
    return;
  grip = self->over ? grip_near (self, self->pointer) : NULL;
  item = self->over && grip == NULL ? item_at (self, self->pointer) : -1;
  if (!self->grip_keyed && grip != self->grip)
    rw_canvas_take_grip (self, grip, FALSE);
  if (grip != NULL)
    set_cursor (self, "grab");
  else
    set_cursor (self, self->over && text_at (self, self->pointer) >= 0 ? "text" : NULL);
  if (item != self->item)
    {
      self->item = item;
      rw_canvas_tell (self);
    }
}

void
rw_canvas_take_grip (RwCanvas *self, const RwGrip *grip, gboolean keyed)
{
  gboolean other = grip != self->grip;

  self->grip = grip;
  self->grip_keyed = keyed && grip != NULL;
  gtk_widget_queue_draw (GTK_WIDGET (self));
  if (!other)
    return;
  if (self->grip_start != NULL)
    rw_document_settle (self->document);
  g_clear_pointer (&self->grip_start, g_free);
  self->bubble_width = 0;
  rw_canvas_tell (self);
}

/* ---- motion ---- */

static void
on_motion (RwCanvas *self, double x, double y)
{
  self->over = TRUE;
  self->pointer = (RwPoint){ x, y };
  look_under_pointer (self);
  rw_canvas_pointed (self);
}

static void
on_leave (RwCanvas *self)
{
  self->over = FALSE;
  look_under_pointer (self);
  rw_canvas_pointed (self);
}

/* ---- moving and zooming the sheet ---- */

static void
pan (RwCanvas *self, double dx, double dy)
{
  GtkWidget *widget = GTK_WIDGET (self);
  const RwLayout *layout = rw_canvas_layout (self);
  RwBox box = layout->extent;

  rw_canvas_stir (self);
  rw_canvas_view_pan (&self->place, dx, dy, device_scale (self));
  rw_canvas_view_keep (&self->place,
                       (RwBox){ box.x0 / layout->scale, box.y0 / layout->scale, box.x1 / layout->scale,
                                box.y1 / layout->scale },
                       gtk_widget_get_width (widget), gtk_widget_get_height (widget), device_scale (self));
  self->fitted = FALSE;
  rw_canvas_panned (self);
}

static void
begin_pan (RwCanvas *self)
{
  self->press = RW_PRESS_PAN;
  self->press_offset = (RwPoint){ 0, 0 };
  set_cursor (self, "grabbing");
}

static void
pan_on (RwCanvas *self, double x, double y)
{
  pan (self, x - self->press_offset.x, y - self->press_offset.y);
  self->press_offset = (RwPoint){ x, y };
}

/* A wheel zooms; fingers on a touchpad move the sheet, and zoom with Control. */
static gboolean
on_scroll (RwCanvas *self, double dx, double dy, GtkEventController *controller)
{
  GdkDevice *device = gtk_event_controller_get_current_event_device (controller);
  GdkModifierType state = gtk_event_controller_get_current_event_state (controller);
  gboolean fingers = gtk_event_controller_scroll_get_unit (GTK_EVENT_CONTROLLER_SCROLL (controller))
                       == GDK_SCROLL_UNIT_SURFACE
                     || (device != NULL && gdk_device_get_source (device) == GDK_SOURCE_TOUCHPAD);

  if (fingers && (state & GDK_CONTROL_MASK) == 0)
    pan (self, -dx * 20, -dy * 20);
  else
    rw_canvas_zoom (self, pow (WHEEL_FACTOR, -dy));
  look_under_pointer (self);
  return GDK_EVENT_STOP;
}

static void
on_pinch_begin (RwCanvas *self)
{
  self->pinch_zoom = self->place.zoom;
}

static void
on_pinch (RwCanvas *self, double factor, GtkGesture *gesture)
{
  RwPoint middle;

  if (gtk_gesture_get_bounding_box_center (gesture, &middle.x, &middle.y))
    rw_canvas_view_zoom (&self->place, self->pinch_zoom * factor / self->place.zoom, middle, device_scale (self));
  self->fitted = FALSE;
  rw_canvas_stir (self);
  rw_canvas_zoomed (self);
}

static void
on_middle_begin (RwCanvas *self)
{
  begin_pan (self);
}

static void
on_middle_end (RwCanvas *self)
{
  self->press = RW_PRESS_NONE;
  set_cursor (self, NULL);
}

/* ---- the first button ---- */

static void
ask_at_text (RwCanvas *self, int index)
{
  const RwPlacedText *text = &g_array_index (rw_canvas_layout (self)->texts, RwPlacedText, index);
  RwSubject subject = g_array_index (rw_canvas_sheet (self)->items, RwItem, text->item).subject;
  double k = RW_PX_PER_PAPER_MM;

  rw_canvas_ask (self, subject,
                 GRAPHENE_RECT_INIT (self->place.x + text->box.x0 * k, self->place.y - text->box.y1 * k,
                                     (text->box.x1 - text->box.x0) * k, (text->box.y1 - text->box.y0) * k));
}

static void
click (RwCanvas *self, RwPoint pointer)
{
  int item = item_at (self, pointer), text = text_at (self, pointer);

  rw_document_select (self->document,
                      item >= 0 ? g_array_index (rw_canvas_sheet (self)->items, RwItem, item).subject
                                : RW_SUBJECT_NONE);
  if (text >= 0)
    ask_at_text (self, text);
}

static void
on_press (RwCanvas *self, double x, double y, GtkGesture *gesture)
{
  const RwGrip *grip = grip_near (self, (RwPoint){ x, y });

  gtk_widget_grab_focus (GTK_WIDGET (self));
  gtk_gesture_set_state (gesture, GTK_EVENT_SEQUENCE_CLAIMED);
  self->over = TRUE;
  self->walk_over = FALSE;
  self->pointer = (RwPoint){ x, y };
  if (self->space_held)
    begin_pan (self);
  else if (grip != NULL)
    {
      self->press = RW_PRESS_GRIP;
      rw_canvas_begin_drag (self, grip, self->pointer);
      set_cursor (self, "grabbing");
    }
  else
    self->press = RW_PRESS_SHEET;
}

static void
on_drag (RwCanvas *self, double x, double y, GtkGestureDrag *gesture)
{
  GdkModifierType state = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (gesture));
  RwPoint start = { 0, 0 };

  gtk_gesture_drag_get_start_point (gesture, &start.x, &start.y);
  if (self->press == RW_PRESS_SHEET && hypot (x, y) > CLICK_SLOP)
    begin_pan (self);
  if (self->press == RW_PRESS_PAN)
    pan_on (self, x, y);
  else if (self->press == RW_PRESS_GRIP && self->drag != NULL)
    rw_canvas_drag_to (self, (RwPoint){ start.x + x, start.y + y }, (state & GDK_SHIFT_MASK) != 0);
}

static void
on_release (RwCanvas *self)
{
  RwPress press = self->press;

  self->press = RW_PRESS_NONE;
  if (self->drag != NULL)
    rw_canvas_end_drag (self);
  if (press == RW_PRESS_SHEET)
    click (self, self->pointer);
  look_under_pointer (self);
}

static void
on_cancel (RwCanvas *self)
{
  self->press = RW_PRESS_NONE;
  if (self->drag != NULL)
    rw_canvas_cancel_drag (self);
  look_under_pointer (self);
}

/* ---- controllers ---- */

static void
add (RwCanvas *self, gpointer controller)
{
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (controller));
}

static void
add_motion_and_scroll (RwCanvas *self)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkEventController *scroll = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);

  g_signal_connect_swapped (motion, "enter", G_CALLBACK (on_motion), self);
  g_signal_connect_swapped (motion, "motion", G_CALLBACK (on_motion), self);
  g_signal_connect_swapped (motion, "leave", G_CALLBACK (on_leave), self);
  g_signal_connect_swapped (scroll, "scroll", G_CALLBACK (on_scroll), self);
  add (self, motion);
  add (self, scroll);
}

void
rw_canvas_add_pointer (RwCanvas *self)
{
  GtkGesture *first = gtk_gesture_drag_new (), *middle = gtk_gesture_drag_new ();
  GtkGesture *pinch = gtk_gesture_zoom_new ();

  add_motion_and_scroll (self);
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (first), GDK_BUTTON_PRIMARY);
  g_signal_connect_swapped (first, "drag-begin", G_CALLBACK (on_press), self);
  g_signal_connect_swapped (first, "drag-update", G_CALLBACK (on_drag), self);
  g_signal_connect_swapped (first, "drag-end", G_CALLBACK (on_release), self);
  g_signal_connect_swapped (first, "cancel", G_CALLBACK (on_cancel), self);
  add (self, first);

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (middle), GDK_BUTTON_MIDDLE);
  g_signal_connect_swapped (middle, "drag-begin", G_CALLBACK (on_middle_begin), self);
  g_signal_connect_swapped (middle, "drag-update", G_CALLBACK (pan_on), self);
  g_signal_connect_swapped (middle, "drag-end", G_CALLBACK (on_middle_end), self);
  add (self, middle);

  g_signal_connect_swapped (pinch, "begin", G_CALLBACK (on_pinch_begin), self);
  g_signal_connect_swapped (pinch, "scale-changed", G_CALLBACK (on_pinch), self);
  add (self, pinch);
}
