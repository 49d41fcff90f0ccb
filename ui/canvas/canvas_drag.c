#include "canvas_private.h"

#include <glib/gi18n.h>
#include <math.h>

#include "grip_words.h"

/* How far the pointer must go before a press is meant as a drag, pixels. */
#define THRESHOLD 2.0

/* With the modifier for fine work the grip goes a tenth of the pointer's way. */
#define FINE_PACE 0.1

/* ---- putting a value ---- */

/* All items of a list with one of them changed, as text; millimetres whatever is shown. */
static char *
list_text (const RwLengthList *list)
{
  GString *text = g_string_new (NULL);

  for (int i = 0; i < list->count; i++)
    {
      g_autofree char *number = rw_number_write (list->at[i]);

      g_string_append_printf (text, "%s%s mm", i > 0 ? "; " : "", number);
    }
  return g_string_free (text, FALSE);
}

static void
put_item (RwCanvas *self, const RwGrip *grip, double value)
{
  RwDesign design = *rw_document_design (self->document);
  g_autofree char *text = NULL;

  rw_grip_put (grip, rw_document_now (self->document), &design, value);
  text = list_text (&design.rim_course_thickness);
  rw_document_set_text (self->document, grip->param, text, NULL);
}

static void
put_dragged (RwCanvas *self, const RwGrip *grip, double value)
{
  if (grip->item > 0)
    put_item (self, grip, value);
  else
    rw_document_drag_number (self->document, rw_grip_drags (grip, self->drag->scene.result), value);
}

/* ---- with the pointer ---- */

static RwCanvasDrag *
drag_new (RwCanvas *self, const RwGrip *grip, RwPoint pointer)
{
  RwCanvasDrag *drag = g_new0 (RwCanvasDrag, 1);
  RwGripScene now = rw_canvas_scene (self);

  drag->grip = grip;
  drag->last = pointer;
  drag->scene.design = g_memdup2 (now.design, sizeof *now.design);
  drag->scene.measured = g_memdup2 (now.measured, sizeof *now.measured);
  drag->scene.result = g_memdup2 (now.result, sizeof *now.result);
  drag->scene.view = now.view;
  rw_grip_place (grip, now.view, now.result, &drag->start);
  return drag;
}

static void
drag_free (RwCanvasDrag *drag)
{
  g_free ((gpointer) drag->scene.design);
  g_free ((gpointer) drag->scene.measured);
  g_free ((gpointer) drag->scene.result);
  g_free (drag);
}

void
rw_canvas_begin_drag (RwCanvas *self, const RwGrip *grip, RwPoint pointer)
{
  RwGripScene scene = rw_canvas_scene (self);
  g_autofree char *name = rw_grip_name (grip);

  rw_canvas_take_grip (self, grip, FALSE);
  if (rw_grip_is_fact (grip, &scene))
    return;
  self->drag = drag_new (self, grip, pointer);
  self->bubble_width = 0;
  rw_document_begin_drag (self->document, name);
  rw_canvas_tell (self);
}

void
rw_canvas_drag_to (RwCanvas *self, RwPoint pointer, gboolean fine)
{
  RwCanvasDrag *drag = self->drag;
  double pace = fine ? FINE_PACE : 1;
  double dx = pointer.x - drag->last.x, dy = pointer.y - drag->last.y;
  double value;
  RwPoint wanted;

  if (!drag->moving && hypot (dx, dy) < THRESHOLD)
    return;
  drag->moving = TRUE;
  drag->last = pointer;
  drag->travel.x += pace * dx / self->place.zoom;
  drag->travel.y -= pace * dy / self->place.zoom;

  wanted = (RwPoint){ drag->start.x + drag->travel.x, drag->start.y + drag->travel.y };
  value = rw_grip_value_at (drag->grip, &drag->scene, wanted);
  value = rw_grip_snap (drag->grip, drag->scene.result, rw_document_style (self->document).units, fine, value);
  put_dragged (self, drag->grip, value);
}

/* The row of the form is marked afterwards: opening its group takes longer than a frame of the drag. */
void
rw_canvas_end_drag (RwCanvas *self)
{
  RwSubject subject = { self->drag->grip->param, -1 };

  g_clear_pointer (&self->drag, drag_free);
  rw_document_end_drag (self->document);
  rw_document_select (self->document, subject);
  rw_canvas_drop_ghost (self);
  rw_canvas_stir (self);
  rw_canvas_tell (self);
  rw_canvas_pointed (self);
}

void
rw_canvas_cancel_drag (RwCanvas *self)
{
  g_clear_pointer (&self->drag, drag_free);
  rw_document_cancel_drag (self->document);
  rw_canvas_drop_ghost (self);
  rw_canvas_stir (self);
  rw_canvas_tell (self);
  rw_canvas_pointed (self);
}

/* ---- with the keys ---- */

void
rw_canvas_nudge (RwCanvas *self, int by, gboolean fine)
{
  RwGripScene scene = rw_canvas_scene (self);
  const RwGrip *grip = self->grip;
  double value;

  if (grip == NULL || self->drag != NULL || rw_grip_is_fact (grip, &scene))
    return;
  if (self->grip_start == NULL)
    self->grip_start = g_memdup2 (scene.result, sizeof *scene.result);

  value = rw_grip_nudge (grip, scene.result, rw_document_style (self->document).units, fine,
                         rw_grip_get (grip, scene.result, scene.design), by);
  if (grip->item > 0)
    put_item (self, grip, value);
  else
    rw_document_set_number (self->document, rw_grip_drags (grip, scene.result), value, NULL);
}
