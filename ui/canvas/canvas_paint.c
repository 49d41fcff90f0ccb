#include "canvas_private.h"

#include "base/theme.h"

/* ---- the drawing ---- */

static void
append_drawing (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette)
{
  GtkWidget *widget = GTK_WIDGET (self);
  RwRasterJob job = {
    .layout = rw_canvas_layout (self),
    .ghost = rw_canvas_ghost (self),
    .palette = palette,
    .place = self->place,
    .width = gtk_widget_get_width (widget),
    .height = gtk_widget_get_height (widget),
    .device_scale = gtk_widget_get_scale_factor (widget),
  };

  gboolean held = rw_document_drag_start (self->document) != NULL;

  rw_raster_append (self->raster, snapshot, &job, held || self->rest_source != 0);
}

/* ---- all of it ---- */

static void
append_focus (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette)
{
  GtkWidget *widget = GTK_WIDGET (self);
  GdkRGBA accent = { palette->accent.r, palette->accent.g, palette->accent.b, 1 };
  GskRoundedRect frame;

  if (!gtk_widget_has_visible_focus (widget))
    return;
  gsk_rounded_rect_init_from_rect (&frame,
                                   &GRAPHENE_RECT_INIT (0, 0, gtk_widget_get_width (widget),
                                                        gtk_widget_get_height (widget)), 0);
  gtk_snapshot_append_border (snapshot, &frame, (float[4]){ 2, 2, 2, 2 },
                              (GdkRGBA[4]){ accent, accent, accent, accent });
}

void
rw_canvas_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwCanvas *self = RW_CANVAS (widget);
  const RwPalette *palette = rw_theme_palette (widget);

  append_drawing (self, snapshot, palette);
  rw_canvas_append_marks (self, snapshot, palette);
  rw_canvas_append_grips (self, snapshot, palette);
  rw_canvas_append_bubble (self, snapshot, palette);
  append_focus (self, snapshot, palette);
}
