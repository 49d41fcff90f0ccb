#include "page_view.h"

#include <math.h>

#define AIR 18 /* px round the page */
#define LEAST 240
#define STEP 1.25       /* of a zoom */
#define NEAREST 32.0    /* px per mm */
#define KEY_MOVE 60.0   /* px */
#define DOTS_PER_MM (96 / 25.4)

struct _RwPageView
{
  GtkWidget parent;

  const RwPaperSet  *set;
  const RwPaperPage *page;
  double             zoom; /* px per mm; 0: the whole page */
  RwPoint            middle; /* of the view, mm on the page, where it is not whole */
  RwPoint            held; /* the middle when a drag began */
  RwPoint            pointer; /* px */
  GskRenderNode     *node; /* the page, painted for the present size and place; NULL: to be painted */
};

G_DEFINE_FINAL_TYPE (RwPageView, rw_page_view, GTK_TYPE_WIDGET)

static guint zoomed_signal;

/* ---- where the page lies ---- */

static double
width_of (RwPageView *self)
{
  return gtk_widget_get_width (GTK_WIDGET (self));
}

static double
height_of (RwPageView *self)
{
  return gtk_widget_get_height (GTK_WIDGET (self));
}

static double
whole_scale (RwPageView *self)
{
  return MAX (0.1, MIN ((width_of (self) - 2 * AIR) / self->page->width,
                        (height_of (self) - 2 * AIR) / self->page->height));
}

static double
scale_of (RwPageView *self)
{
  return self->zoom > 0 ? self->zoom : whole_scale (self);
}

/* Along one axis: in the middle where there is room, else so that no more than the air shows beside it. */
static double
corner_of (double view, double page, double scale, double middle)
{
  double size = page * scale, corner = view / 2 - middle * scale;

  if (size + 2 * AIR <= view)
    return floor ((view - size) / 2);
  return floor (CLAMP (corner, view - AIR - size, (double) AIR));
}

static graphene_rect_t
place_of_page (RwPageView *self)
{
  double scale = scale_of (self);

  return GRAPHENE_RECT_INIT ((float) corner_of (width_of (self), self->page->width, scale, self->middle.x),
                             (float) corner_of (height_of (self), self->page->height, scale, self->middle.y),
                             (float) (self->page->width * scale), (float) (self->page->height * scale));
}

static void
paint_anew (RwPageView *self)
{
  g_clear_pointer (&self->node, gsk_render_node_unref);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* ---- painting ---- */

static void
paint_page (RwPageView *self, const graphene_rect_t *place)
{
  double scale = (double) place->size.width / self->page->width;
  cairo_t *cr;

  self->node = gsk_cairo_node_new (place);
  cr = gsk_cairo_node_get_draw_context (self->node);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  cairo_translate (cr, (double) place->origin.x, (double) place->origin.y);
  cairo_scale (cr, scale, scale);
  rw_paper_set_paint (self->set, self->page, cr);
  cairo_destroy (cr);
}

/* Paper is white in any look; a thin shadow tells it from what it lies on. */
static void
append_shadow (GtkSnapshot *snapshot, const graphene_rect_t *place)
{
  GskRoundedRect outline;
  const GdkRGBA colour = { 0, 0, 0, 0.4f };

  gsk_rounded_rect_init_from_rect (&outline, place, 0);
  gtk_snapshot_append_outset_shadow (snapshot, &outline, &colour, 0, 1, 1, 5);
}

static void
rw_page_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwPageView *self = RW_PAGE_VIEW (widget);
  graphene_rect_t place;

  if (self->page == NULL)
    return;
  place = place_of_page (self);
  if (self->node == NULL)
    paint_page (self, &place);
  append_shadow (snapshot, &place);
  gtk_snapshot_append_node (snapshot, self->node);
}

static void
rw_page_view_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  RwPageView *self = RW_PAGE_VIEW (widget);

  g_clear_pointer (&self->node, gsk_render_node_unref);
  if (self->zoom <= 0)
    g_signal_emit (self, zoomed_signal, 0);
}

static void
rw_page_view_measure (GtkWidget     *widget,
                      GtkOrientation orientation,
                      int            for_size,
                      int           *minimum,
                      int           *natural,
                      int           *minimum_baseline,
                      int           *natural_baseline)
{
  *minimum = LEAST;
  *natural = 2 * LEAST;
}

/* ---- zooming and moving ---- */

/* Keeps what is at a point of the view there; from the whole page on, no farther. */
static void
zoom_at (RwPageView *self, double factor, double x, double y)
{
  graphene_rect_t place;
  double old, scale, px, py;

  if (self->page == NULL)
    return;
  place = place_of_page (self);
  old = scale_of (self);
  scale = CLAMP (old * factor, whole_scale (self), NEAREST);
  px = (x - (double) place.origin.x) / old;
  py = (y - (double) place.origin.y) / old;
  self->zoom = scale > whole_scale (self) * 1.01 ? scale : 0;
  self->middle = (RwPoint){ px - (x - width_of (self) / 2) / scale, py - (y - height_of (self) / 2) / scale };
  paint_anew (self);
  g_signal_emit (self, zoomed_signal, 0);
}

/* Puts the middle of the view at a place of the page, as far as the page goes. */
static void
look_at (RwPageView *self, RwPoint middle)
{
  graphene_rect_t place;
  double scale;

  if (self->page == NULL || self->zoom <= 0)
    return;
  self->middle = middle;
  place = place_of_page (self);
  scale = scale_of (self);
  self->middle = (RwPoint){ (width_of (self) / 2 - (double) place.origin.x) / scale,
                            (height_of (self) / 2 - (double) place.origin.y) / scale };
  paint_anew (self);
}

static gboolean
on_scroll (GtkEventControllerScroll *controller, double dx, double dy, RwPageView *self)
{
  gboolean fingers = gtk_event_controller_scroll_get_unit (controller) == GDK_SCROLL_UNIT_SURFACE;

  if (self->page == NULL)
    return FALSE;
  if (fingers)
    look_at (self, (RwPoint){ self->middle.x + dx / scale_of (self), self->middle.y + dy / scale_of (self) });
  else
    zoom_at (self, pow (STEP, -dy), self->pointer.x, self->pointer.y);
  return TRUE;
}

static void
on_motion (RwPageView *self, double x, double y)
{
  self->pointer = (RwPoint){ x, y };
}

static void
on_drag_begin (RwPageView *self)
{
  gtk_widget_grab_focus (GTK_WIDGET (self));
  self->held = self->middle;
}

static void
on_drag (RwPageView *self, double dx, double dy)
{
  if (self->page != NULL)
    look_at (self, (RwPoint){ self->held.x - dx / scale_of (self), self->held.y - dy / scale_of (self) });
}

static gboolean
zoom_by_key (GtkWidget *widget, GVariant *steps, gpointer data)
{
  rw_page_view_zoom (RW_PAGE_VIEW (widget), g_variant_get_int32 (steps));
  return TRUE;
}

static gboolean
move_by_key (GtkWidget *widget, GVariant *way, gpointer data)
{
  RwPageView *self = RW_PAGE_VIEW (widget);
  double dx, dy;

  if (self->page == NULL || self->zoom <= 0)
    return FALSE;
  g_variant_get (way, "(dd)", &dx, &dy);
  look_at (self, (RwPoint){ self->middle.x + dx * KEY_MOVE / self->zoom,
                            self->middle.y + dy * KEY_MOVE / self->zoom });
  return TRUE;
}

/* ---- the widget ---- */

static void
rw_page_view_dispose (GObject *object)
{
  g_clear_pointer (&RW_PAGE_VIEW (object)->node, gsk_render_node_unref);
  G_OBJECT_CLASS (rw_page_view_parent_class)->dispose (object);
}

static void
add_keys (GtkWidgetClass *widget_class)
{
  static const struct
  {
    guint key;
    int   steps;
  } zooms[] = { { GDK_KEY_plus, 1 }, { GDK_KEY_equal, 1 }, { GDK_KEY_KP_Add, 1 }, { GDK_KEY_minus, -1 },
                { GDK_KEY_KP_Subtract, -1 }, { GDK_KEY_0, 0 }, { GDK_KEY_KP_0, 0 } };
  static const struct
  {
    guint  key;
    double dx, dy;
  } moves[]
      = { { GDK_KEY_Left, -1, 0 }, { GDK_KEY_Right, 1, 0 }, { GDK_KEY_Up, 0, -1 }, { GDK_KEY_Down, 0, 1 } };

  for (guint i = 0; i < G_N_ELEMENTS (zooms); i++)
    {
      gtk_widget_class_add_binding (widget_class, zooms[i].key, 0, zoom_by_key, "i", zooms[i].steps);
      gtk_widget_class_add_binding (widget_class, zooms[i].key, GDK_CONTROL_MASK, zoom_by_key, "i",
                                    zooms[i].steps);
    }
  for (guint i = 0; i < G_N_ELEMENTS (moves); i++)
    gtk_widget_class_add_binding (widget_class, moves[i].key, 0, move_by_key, "(dd)", moves[i].dx,
                                  moves[i].dy);
}

static void
rw_page_view_class_init (RwPageViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = rw_page_view_dispose;
  widget_class->snapshot = rw_page_view_snapshot;
  widget_class->size_allocate = rw_page_view_size_allocate;
  widget_class->measure = rw_page_view_measure;
  gtk_widget_class_set_css_name (widget_class, "pageview");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
  add_keys (widget_class);
  zoomed_signal = g_signal_new ("zoomed", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                G_TYPE_NONE, 0);
}

static void
rw_page_view_init (RwPageView *self)
{
  GtkEventController *scroll = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkGesture *drag = gtk_gesture_drag_new ();

  g_signal_connect (scroll, "scroll", G_CALLBACK (on_scroll), self);
  g_signal_connect_swapped (drag, "drag-begin", G_CALLBACK (on_drag_begin), self);
  g_signal_connect_swapped (drag, "drag-update", G_CALLBACK (on_drag), self);
  g_signal_connect_swapped (motion, "enter", G_CALLBACK (on_motion), self);
  g_signal_connect_swapped (motion, "motion", G_CALLBACK (on_motion), self);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drag));
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
}

GtkWidget *
rw_page_view_new (void)
{
  return g_object_new (RW_TYPE_PAGE_VIEW, NULL);
}

void
rw_page_view_show (RwPageView *self, const RwPaperSet *set, const RwPaperPage *page)
{
  self->set = set;
  self->page = page;
  paint_anew (self);
}

void
rw_page_view_zoom (RwPageView *self, int steps)
{
  double factor = steps == 0 ? 0 : pow (STEP, steps);

  zoom_at (self, factor, width_of (self) / 2, height_of (self) / 2);
}

double
rw_page_view_scale (RwPageView *self)
{
  return self->page != NULL && width_of (self) > 0 ? scale_of (self) / DOTS_PER_MM : 0;
}
