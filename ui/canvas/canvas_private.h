/* The canvas' inside, for canvas*.c only. */
#pragma once

#include "base/canvas_view.h"
#include "draw/grip.h"
#include "io/paint_cairo.h"
#include "sheet/layout.h"
#include "canvas.h"
#include "canvas_raster.h"

/* A drag under way. */
typedef struct
{
  const RwGrip *grip;
  RwGripScene   scene;  /* as it was when the drag began */
  RwPoint       start;  /* where the grip was, sheet mm */
  RwPoint       last;   /* the pointer, pixels */
  RwPoint       travel; /* since then, slowed down where fine, sheet mm */
  gboolean      moving; /* has gone far enough to be meant */
} RwCanvasDrag;

/* What a press on the sheet has begun. */
typedef enum
{
  RW_PRESS_NONE,
  RW_PRESS_GRIP,
  RW_PRESS_SHEET, /* a click, as long as it does not move */
  RW_PRESS_PAN,
} RwPress;

struct _RwCanvas
{
  GtkWidget parent;

  RwDocument *document;
  RwView      view;

  /* The drawing, made anew when needed; each rests on the one before it. */
  RwSheet  *sheet;
  RwLayout *layout;
  RwRaster *raster;
  guint     rest_source; /* set while things move: painted quickly, and well once they have come to rest */

  RwCanvasView place;
  gboolean     fitted; /* keeps fitting when the widget's size changes */

  /* The ghost: the build a drag began with, else the reference. */
  const RwResult *ghost_of;   /* only compared */
  RwSheet        *ghost_sheet;
  RwSheet         ghost; /* the outlines of it that have moved; items NULL: to be found anew */
  GskRenderNode  *marks;       /* of the selection, from the sheet's origin; NULL: to be made anew */

  /* Grips. */
  const RwGrip *grip;       /* under the pointer, held, or walked to; NULL */
  gboolean      grip_keyed; /* walked to: stays until left */
  gboolean      walk_over;  /* left by Escape: Tab goes on to another widget */
  RwResult     *grip_start; /* what the change is counted from while keys move it */
  RwCanvasDrag *drag;
  double        bubble_width; /* does not shrink while it is up */

  /* Pointer. */
  gboolean over;
  RwPoint  pointer; /* pixels */
  int      item;    /* of the sheet under the pointer, or -1 */
  RwPress  press;
  RwPoint  press_offset; /* of a pan, up to now */
  gboolean space_held;
  double   pinch_zoom;

  GtkWidget *popover; /* the entry over the drawing */
  RwParamId  popover_param;
  GtkWidget *entry, *complaint;
};

/* ---- canvas.c: the drawing and its life ---- */

const RwSheet  *rw_canvas_sheet  (RwCanvas *self);
const RwLayout *rw_canvas_layout (RwCanvas *self);
/* The zoom is another: layout and nodes are to be made anew. */
void rw_canvas_zoomed (RwCanvas *self);
/* The sheet's place is another; the pointer's alone. */
void rw_canvas_panned (RwCanvas *self);
void rw_canvas_pointed (RwCanvas *self);
/* Something moves under the hand: until it rests the drawing is painted with coarser edges, which takes half
 * the time. */
void rw_canvas_stir (RwCanvas *self);
RwGripScene rw_canvas_scene (RwCanvas *self);
/* Grip or item under the pointer, or the numbers, are others: says so to eyes and to screen readers. */
void rw_canvas_tell (RwCanvas *self);

/* ---- canvas_ghost.c ---- */

/* The outlines of what was before that are elsewhere now, ready to be painted; NULL: nothing was. */
const RwSheet *rw_canvas_ghost (RwCanvas *self);
/* What was before is another; which of it has moved. */
void rw_canvas_drop_ghost (RwCanvas *self);
void rw_canvas_fade_ghost (RwCanvas *self);

/* ---- canvas_paint.c ---- */

void rw_canvas_snapshot (GtkWidget *widget, GtkSnapshot *snapshot);

/* ---- canvas_marks.c: what is laid over the drawing ---- */

void rw_canvas_append_marks  (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette);
void rw_canvas_append_grips  (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette);
void rw_canvas_append_bubble (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette);

/* ---- canvas_input.c, canvas_keys.c ---- */

void     rw_canvas_add_pointer (RwCanvas *self);
void     rw_canvas_add_keys    (RwCanvas *self);
gboolean rw_canvas_walk        (GtkWidget *widget, GtkDirectionType direction);
/* Makes a grip the one at hand; NULL: none. */
void     rw_canvas_take_grip   (RwCanvas *self, const RwGrip *grip, gboolean keyed);
/* Where a grip stands on the screen; FALSE where there is none. */
gboolean rw_canvas_grip_at     (RwCanvas *self, const RwGrip *grip, RwPoint *screen);

/* ---- canvas_drag.c ---- */

void rw_canvas_begin_drag  (RwCanvas *self, const RwGrip *grip, RwPoint pointer);
void rw_canvas_drag_to     (RwCanvas *self, RwPoint pointer, gboolean fine);
void rw_canvas_end_drag    (RwCanvas *self);
void rw_canvas_cancel_drag (RwCanvas *self);
/* Moves the grip at hand by steps; one step of undo until it is left. */
void rw_canvas_nudge       (RwCanvas *self, int by, gboolean fine);

/* ---- canvas_entry.c ---- */

/* An entry for what is set, over a place of the screen; for what is worked out, what it follows from. */
void rw_canvas_ask (RwCanvas *self, RwSubject subject, graphene_rect_t place);
