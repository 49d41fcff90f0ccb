#include "wrap_box.h"

#define SPACING 8

struct _RwWrapBox
{
  GtkWidget parent;

  GtkWidget *first, *second;
};

G_DEFINE_FINAL_TYPE (RwWrapBox, rw_wrap_box, GTK_TYPE_WIDGET)

/* What a child asks for in one direction, given its other measure or -1; nothing where it is hidden. */
static int
asked (GtkWidget *child, GtkOrientation orientation, int for_size, gboolean least)
{
  int minimum = 0, natural = 0;

  if (gtk_widget_should_layout (child))
    gtk_widget_measure (child, orientation, for_size, &minimum, &natural, NULL, NULL);
  return least ? minimum : natural;
}

static int
width_wanted (GtkWidget *child)
{
  return asked (child, GTK_ORIENTATION_HORIZONTAL, -1, FALSE);
}

/* Where the second starts on the line of the first. */
static int
second_start (RwWrapBox *self)
{
  int first = width_wanted (self->first);

  return first > 0 && gtk_widget_should_layout (self->second) ? first + SPACING : first;
}

static gboolean
is_one_line (RwWrapBox *self, int width)
{
  return width < 0 || second_start (self) + width_wanted (self->second) <= width;
}

/* The height of a child of that width; -1 as wide as it likes. */
static int
height_at (GtkWidget *child, int width, gboolean least)
{
  int needed = asked (child, GTK_ORIENTATION_HORIZONTAL, -1, TRUE);

  return asked (child, GTK_ORIENTATION_VERTICAL, width < 0 ? -1 : MAX (width, needed), least);
}

static int
height_of (RwWrapBox *self, int width, gboolean least)
{
  if (is_one_line (self, width))
    return MAX (height_at (self->first, -1, least), height_at (self->second, -1, least));
  return height_at (self->first, width, least) + height_at (self->second, width, least);
}

static void
rw_wrap_box_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                     int *minimum_baseline, int *natural_baseline)
{
  RwWrapBox *self = RW_WRAP_BOX (widget);

  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    {
      *minimum = MAX (asked (self->first, orientation, -1, TRUE), asked (self->second, orientation, -1, TRUE));
      *natural = second_start (self) + width_wanted (self->second);
    }
  else
    {
      *minimum = height_of (self, for_size, TRUE);
      *natural = height_of (self, for_size, FALSE);
    }
}

static void
place (GtkWidget *child, int x, int y, int width, int height)
{
  if (gtk_widget_should_layout (child))
    gtk_widget_size_allocate (child, &(GtkAllocation){ x, y, width, height }, -1);
}

static void
rw_wrap_box_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  RwWrapBox *self = RW_WRAP_BOX (widget);
  int start = second_start (self), above = height_at (self->first, width, FALSE);
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;

  if (is_one_line (self, width))
    {
      int first = MIN (width_wanted (self->first), width);

      place (self->first, mirrored ? width - first : 0, 0, first, height);
      place (self->second, mirrored ? 0 : start, 0, width - start, height);
      return;
    }
  place (self->first, 0, 0, width, above);
  place (self->second, 0, above, width, height - above);
}

static GtkSizeRequestMode
rw_wrap_box_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
rw_wrap_box_dispose (GObject *object)
{
  RwWrapBox *self = RW_WRAP_BOX (object);

  g_clear_pointer (&self->first, gtk_widget_unparent);
  g_clear_pointer (&self->second, gtk_widget_unparent);
  G_OBJECT_CLASS (rw_wrap_box_parent_class)->dispose (object);
}

static void
rw_wrap_box_class_init (RwWrapBoxClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = rw_wrap_box_dispose;
  widget_class->measure = rw_wrap_box_measure;
  widget_class->size_allocate = rw_wrap_box_size_allocate;
  widget_class->get_request_mode = rw_wrap_box_get_request_mode;
}

static void
rw_wrap_box_init (RwWrapBox *self)
{
}

GtkWidget *
rw_wrap_box_new (GtkWidget *first, GtkWidget *second)
{
  RwWrapBox *self = g_object_new (RW_TYPE_WRAP_BOX, NULL);

  self->first = first;
  self->second = second;
  gtk_widget_set_parent (first, GTK_WIDGET (self));
  gtk_widget_set_parent (second, GTK_WIDGET (self));
  return GTK_WIDGET (self);
}
