#include "canvas_private.h"

#define ZOOM_STEP 1.25
#define PAN_STEP 40.0
#define TEN 10

/* ---- walking the grips ---- */

/* The next grip of this view in the table's order, from one on, or from either end where that is NULL. */
static const RwGrip *
next_grip (RwCanvas *self, const RwGrip *from, int way)
{
  int i = from != NULL ? (int) (from - rw_grips) + way : way > 0 ? 0 : rw_grips_count - 1;
  RwPoint at;

  for (; i >= 0 && i < rw_grips_count; i += way)
    if (rw_canvas_grip_at (self, &rw_grips[i], &at))
      return &rw_grips[i];
  return NULL;
}

/* Moves the sheet as far as the grip needs to be seen. */
static void
bring_into_sight (RwCanvas *self, const RwGrip *grip)
{
  double margin = 30, width = gtk_widget_get_width (GTK_WIDGET (self));
  double height = gtk_widget_get_height (GTK_WIDGET (self));
  RwPoint at;

  if (!rw_canvas_grip_at (self, grip, &at))
    return;
  rw_canvas_view_pan (&self->place, CLAMP (at.x, margin, MAX (width - margin, margin)) - at.x,
                      CLAMP (at.y, margin, MAX (height - margin, margin)) - at.y,
                      gtk_widget_get_scale_factor (GTK_WIDGET (self)));
  rw_canvas_panned (self);
}

static void
walk_to (RwCanvas *self, const RwGrip *grip)
{
  self->walk_over = FALSE;
  rw_canvas_take_grip (self, grip, TRUE);
  if (grip == NULL)
    return;
  bring_into_sight (self, grip);
  rw_document_select (self->document, (RwSubject){ grip->param, -1 });
}

gboolean
rw_canvas_walk (GtkWidget *widget, GtkDirectionType direction)
{
  RwCanvas *self = RW_CANVAS (widget);
  int way = direction == GTK_DIR_TAB_BACKWARD ? -1 : 1;
  const RwGrip *grip;

  if (direction != GTK_DIR_TAB_FORWARD && direction != GTK_DIR_TAB_BACKWARD)
    return FALSE;
  if (gtk_widget_has_focus (widget) && self->walk_over)
    return FALSE;

  grip = next_grip (self, gtk_widget_has_focus (widget) ? self->grip : NULL, way);
  walk_to (self, grip);
  return grip != NULL && gtk_widget_grab_focus (widget);
}

static void
on_focus_leave (RwCanvas *self)
{
  self->space_held = FALSE;
  self->walk_over = FALSE;
  if (self->grip_keyed)
    rw_canvas_take_grip (self, NULL, FALSE);
}

/* ---- keys ---- */

static gboolean
on_escape (RwCanvas *self)
{
  if (self->drag != NULL)
    rw_canvas_cancel_drag (self);
  else if (self->grip != NULL)
    {
      self->walk_over = self->grip_keyed;
      rw_canvas_take_grip (self, NULL, FALSE);
    }
  else
    {
      rw_document_select (self->document, RW_SUBJECT_NONE);
      return GDK_EVENT_PROPAGATE;
    }
  return GDK_EVENT_STOP;
}

static void
ask_for_grip (RwCanvas *self)
{
  RwPoint at;

  if (!rw_canvas_grip_at (self, self->grip, &at))
    return;
  rw_canvas_ask (self, (RwSubject){ rw_grip_drags (self->grip, rw_document_now (self->document)), -1 },
                 GRAPHENE_RECT_INIT (at.x - 8, at.y - 8, 16, 16));
}

/* Arrows move the grip, or the sheet where none is at hand.  Up and right are more, as on any slider. */
static gboolean
on_arrow (RwCanvas *self, int dx, int dy, GdkModifierType state)
{
  int by = dx - dy;

  if (self->drag != NULL)
    return GDK_EVENT_STOP;
  if (self->grip != NULL)
    rw_canvas_nudge (self, state & GDK_CONTROL_MASK ? by * TEN : by, (state & GDK_SHIFT_MASK) != 0);
  else
    {
      rw_canvas_view_pan (&self->place, -dx * PAN_STEP, -dy * PAN_STEP,
                          gtk_widget_get_scale_factor (GTK_WIDGET (self)));
      self->fitted = FALSE;
      rw_canvas_panned (self);
    }
  return GDK_EVENT_STOP;
}

static gboolean
on_size_key (RwCanvas *self, guint key)
{
  switch (key)
    {
    case GDK_KEY_plus:
    case GDK_KEY_equal:
    case GDK_KEY_KP_Add:
      rw_canvas_zoom (self, ZOOM_STEP);
      return GDK_EVENT_STOP;
    case GDK_KEY_minus:
    case GDK_KEY_KP_Subtract:
      rw_canvas_zoom (self, 1 / ZOOM_STEP);
      return GDK_EVENT_STOP;
    case GDK_KEY_0:
    case GDK_KEY_KP_0:
      rw_canvas_fit (self);
      return GDK_EVENT_STOP;
    default:
      return GDK_EVENT_PROPAGATE;
    }
}

static gboolean
on_key (RwCanvas *self, guint key, guint code, GdkModifierType state)
{
  switch (key)
    {
    case GDK_KEY_Escape:
      return on_escape (self);
    case GDK_KEY_Left:
    case GDK_KEY_KP_Left:
      return on_arrow (self, -1, 0, state);
    case GDK_KEY_Right:
    case GDK_KEY_KP_Right:
      return on_arrow (self, 1, 0, state);
    case GDK_KEY_Up:
    case GDK_KEY_KP_Up:
      return on_arrow (self, 0, -1, state);
    case GDK_KEY_Down:
    case GDK_KEY_KP_Down:
      return on_arrow (self, 0, 1, state);
    case GDK_KEY_Home:
    case GDK_KEY_End:
      walk_to (self, next_grip (self, NULL, key == GDK_KEY_Home ? 1 : -1));
      return GDK_EVENT_STOP;
    case GDK_KEY_Return:
    case GDK_KEY_KP_Enter:
      if (self->grip == NULL || self->drag != NULL)
        return GDK_EVENT_PROPAGATE;
      ask_for_grip (self);
      return GDK_EVENT_STOP;
    case GDK_KEY_space:
      self->space_held = TRUE;
      return GDK_EVENT_STOP;
    default:
      return state & (GDK_CONTROL_MASK | GDK_ALT_MASK) ? GDK_EVENT_PROPAGATE : on_size_key (self, key);
    }
}

static void
on_key_up (RwCanvas *self, guint key)
{
  if (key == GDK_KEY_space)
    self->space_held = FALSE;
}

void
rw_canvas_add_keys (RwCanvas *self)
{
  GtkEventController *keys = gtk_event_controller_key_new (), *focus = gtk_event_controller_focus_new ();

  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (on_key), self);
  g_signal_connect_swapped (keys, "key-released", G_CALLBACK (on_key_up), self);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (on_focus_leave), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);
}
