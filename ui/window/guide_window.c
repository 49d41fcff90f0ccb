#include "guide_window.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/canvas_view.h"
#include "base/theme.h"
#include "draw/drawing.h"
#include "io/paint_cairo.h"
#include "guide_text.h"

/* Pixels. */
#define WIDTH 940
#define HEIGHT 720
#define TEXT_WIDTH 640
#define PICTURE_HEIGHT 420 /* at most */
#define DIMENSIONS 0.78    /* shapes take so much of a picture, their dimensions the rest */
#define MARGIN 12 /* round a picture */

/* ---- pictures ---- */

typedef struct
{
  RwSheet  *sheet;
  RwLayout *layout;
} Picture;

static void
picture_free (gpointer data)
{
  Picture *picture = data;

  rw_layout_free (picture->layout);
  rw_sheet_free (picture->sheet);
  g_free (picture);
}

static void
draw_picture (GtkDrawingArea *area, cairo_t *cr, int width, int height, gpointer user_data)
{
  const Picture *picture = user_data;
  const RwPalette *palette = rw_theme_palette (GTK_WIDGET (area));
  const RwBox *box = &picture->layout->extent;
  double pixel = 1 / (RW_PX_PER_PAPER_MM * gtk_widget_get_scale_factor (GTK_WIDGET (area)));

  cairo_set_source_rgb (cr, palette->paper.r, palette->paper.g, palette->paper.b);
  cairo_paint (cr);
  cairo_translate (cr, (width - (box->x1 - box->x0) * RW_PX_PER_PAPER_MM) / 2, MARGIN);
  cairo_scale (cr, RW_PX_PER_PAPER_MM, RW_PX_PER_PAPER_MM);
  cairo_translate (cr, -box->x0, box->y1);
  rw_paint (cr, picture->layout, palette, pixel);
}

/* As wide as the text or as high as it may be, at the scale that gives. */
static GtkWidget *
new_picture (RwDocument *document, RwView view, const char *caption)
{
  GtkWidget *area = gtk_drawing_area_new ();
  Picture *picture = g_new0 (Picture, 1);
  RwBox shapes;
  double wide, high;

  picture->sheet = rw_draw (view, rw_document_now (document), rw_document_measured (document),
                            rw_document_style (document));
  shapes = rw_sheet_extent (picture->sheet);
  wide = TEXT_WIDTH * DIMENSIONS / MAX (shapes.x1 - shapes.x0, 1);
  high = PICTURE_HEIGHT * DIMENSIONS / MAX (shapes.y1 - shapes.y0, 1);
  picture->layout = rw_layout_new (picture->sheet, MIN (wide, high) / RW_PX_PER_PAPER_MM,
                                   rw_letters_size (RW_LETTERS_SMALL) * rw_theme_text_scale (area));
  gtk_drawing_area_set_content_width (GTK_DRAWING_AREA (area), TEXT_WIDTH);
  gtk_drawing_area_set_content_height (
      GTK_DRAWING_AREA (area),
      (int) ((picture->layout->extent.y1 - picture->layout->extent.y0) * RW_PX_PER_PAPER_MM) + 2 * MARGIN);
  gtk_drawing_area_set_draw_func (GTK_DRAWING_AREA (area), draw_picture, picture, picture_free);
  rw_access_name (area, caption);
  return area;
}

/* ---- text ---- */

static GtkWidget *
new_label (const char *text)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_markup (GTK_LABEL (label), text);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_width_chars (GTK_LABEL (label), 40);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 80);
  return label;
}

static GtkWidget *
new_item (const RwBlock *block)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  g_autofree char *mark = block->number > 0 ? g_strdup_printf ("%d.", block->number) : g_strdup ("•");
  GtkWidget *label = gtk_label_new (mark);

  gtk_widget_set_valign (label, GTK_ALIGN_START);
  gtk_widget_set_margin_start (label, 12);
  gtk_box_append (GTK_BOX (box), label);
  label = new_label (block->text);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_box_append (GTK_BOX (box), label);
  return box;
}

static GtkWidget *
new_caution (const char *text)
{
  GtkWidget *label = new_label (text);

  gtk_widget_add_css_class (label, "caution");
  return label;
}

static GtkWidget *
new_block (RwDocument *document, const RwBlock *block)
{
  switch (block->kind)
    {
    case RW_BLOCK_ITEM:
      return new_item (block);
    case RW_BLOCK_CAUTION:
      return new_caution (block->text);
    case RW_BLOCK_PICTURE:
      return new_picture (document, (RwView) block->view, block->text);
    default:
      return new_label (block->text);
    }
}

/* ---- chapters ---- */

static GtkWidget *
new_chapter (GtkStack *stack, const char *title)
{
  GtkWidget *scroller = gtk_scrolled_window_new (), *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  GtkWidget *heading = gtk_label_new (title);

  gtk_label_set_xalign (GTK_LABEL (heading), 0);
  gtk_label_set_wrap (GTK_LABEL (heading), TRUE);
  gtk_widget_add_css_class (heading, "title-2");
  gtk_widget_add_css_class (box, "guide");
  gtk_widget_set_halign (box, GTK_ALIGN_CENTER);
  gtk_widget_set_size_request (box, TEXT_WIDTH, -1);
  gtk_box_append (GTK_BOX (box), heading);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), box);
  gtk_widget_set_hexpand (scroller, TRUE);
  gtk_stack_add_titled (stack, scroller, title, title);
  return box;
}

static void
fill (GtkStack *stack, RwDocument *document)
{
  g_autofree char *text = rw_guide_load ();
  g_autoptr (GPtrArray) blocks = rw_guide_read (text);
  GtkWidget *chapter = NULL;

  for (guint i = 0; i < blocks->len; i++)
    {
      const RwBlock *block = g_ptr_array_index (blocks, i);

      if (block->kind == RW_BLOCK_CHAPTER)
        chapter = new_chapter (stack, block->text);
      else if (chapter != NULL)
        gtk_box_append (GTK_BOX (chapter), new_block (document, block));
    }
}

GtkWidget *
rw_guide_window_new (GtkWindow *parent, RwDocument *document)
{
  GtkWidget *window = gtk_window_new (), *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *stack = gtk_stack_new (), *chapters = gtk_stack_sidebar_new ();
  GtkEventController *keys = gtk_shortcut_controller_new ();

  fill (GTK_STACK (stack), document);
  gtk_stack_sidebar_set_stack (GTK_STACK_SIDEBAR (chapters), GTK_STACK (stack));
  gtk_box_append (GTK_BOX (box), chapters);
  gtk_box_append (GTK_BOX (box), stack);
  gtk_window_set_child (GTK_WINDOW (window), box);
  gtk_window_set_title (GTK_WINDOW (window), _("Guide"));
  gtk_window_set_transient_for (GTK_WINDOW (window), parent);
  gtk_window_set_destroy_with_parent (GTK_WINDOW (window), TRUE);
  gtk_window_set_default_size (GTK_WINDOW (window), WIDTH, HEIGHT);
  gtk_shortcut_controller_add_shortcut (
      GTK_SHORTCUT_CONTROLLER (keys),
      gtk_shortcut_new (gtk_keyval_trigger_new (GDK_KEY_Escape, 0), gtk_named_action_new ("window.close")));
  gtk_widget_add_controller (window, keys);
  return window;
}
