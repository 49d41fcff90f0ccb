#include "wrap_box.h"

#define SPACING 8

struct _RwWrapBox
{
  GtkWidget parent;

  int spacing;
};

G_DEFINE_FINAL_TYPE (RwWrapBox, rw_wrap_box, GTK_TYPE_WIDGET)

/* ---- what children ask for ---- */

/* The next child that is shown; after NULL, the first. */
static GtkWidget *
next_shown (RwWrapBox *self, GtkWidget *child)
{
  do
    child = child != NULL ? gtk_widget_get_next_sibling (child) : gtk_widget_get_first_child (GTK_WIDGET (self));
  while (child != NULL && !gtk_widget_should_layout (child));
  return child;
}

static int
asked (GtkWidget *child, GtkOrientation orientation, int for_size, gboolean least)
{
  int minimum, natural;

  gtk_widget_measure (child, orientation, for_size, &minimum, &natural, NULL, NULL);
  return least ? minimum : natural;
}

/* ---- lines ---- */

typedef struct
{
  GtkWidget *first; /* NULL behind the last line */
  int        count;
  int        width; /* of its children at the size that they would like to have */
} Line;

/* As many children as have room side by side, and one at least.  width -1: all of them. */
static Line
line_from (RwWrapBox *self, GtkWidget *first, int width)
{
  Line line = { .first = first };

  for (GtkWidget *child = first; child != NULL; child = next_shown (self, child))
    {
      int wanted = asked (child, GTK_ORIENTATION_HORIZONTAL, -1, FALSE) + (line.count > 0 ? self->spacing : 0);

      if (line.count > 0 && width >= 0 && line.width + wanted > width)
        break;
      line.width += wanted;
      line.count++;
    }
  return line;
}

static GtkWidget *
after_line (RwWrapBox *self, const Line *line)
{
  GtkWidget *child = line->first;

  for (int i = 0; i < line->count; i++)
    child = next_shown (self, child);
  return child;
}

/* What a child of a line is given: what it likes, or what there is; the last of all has the rest too. */
static int
width_in (RwWrapBox *self, const Line *line, GtkWidget *child, int width)
{
  int wanted = asked (child, GTK_ORIENTATION_HORIZONTAL, -1, FALSE);

  if (width < 0)
    return wanted;
  if (next_shown (self, child) == NULL)
    wanted += MAX (0, width - line->width);
  return MAX (MIN (wanted, width), asked (child, GTK_ORIENTATION_HORIZONTAL, -1, TRUE));
}

static int
height_in (RwWrapBox *self, const Line *line, int width, gboolean least)
{
  GtkWidget *child = line->first;
  int height = 0;

  for (int i = 0; i < line->count; i++, child = next_shown (self, child))
    height = MAX (height, asked (child, GTK_ORIENTATION_VERTICAL, width_in (self, line, child, width), least));
  return height;
}

/* ---- measuring and placing ---- */

static int
least_width (RwWrapBox *self)
{
  int width = 0;

  for (GtkWidget *child = next_shown (self, NULL); child != NULL; child = next_shown (self, child))
    width = MAX (width, asked (child, GTK_ORIENTATION_HORIZONTAL, -1, TRUE));
  return width;
}

static int
height_at (RwWrapBox *self, int width, gboolean least)
{
  int height = 0;
  Line line;

  for (line = line_from (self, next_shown (self, NULL), width); line.first != NULL;
       line = line_from (self, after_line (self, &line), width))
    height += height_in (self, &line, width, least);
  return height;
}

static void
rw_wrap_box_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                     int *minimum_baseline, int *natural_baseline)
{
  RwWrapBox *self = RW_WRAP_BOX (widget);

  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    {
      *minimum = least_width (self);
      *natural = line_from (self, next_shown (self, NULL), -1).width;
    }
  else
    {
      *minimum = height_at (self, for_size, TRUE);
      *natural = height_at (self, for_size, FALSE);
    }
}

static void
place_line (RwWrapBox *self, const Line *line, int y, int width, int height)
{
  gboolean mirrored = gtk_widget_get_direction (GTK_WIDGET (self)) == GTK_TEXT_DIR_RTL;
  GtkWidget *child = line->first;
  int x = 0;

  for (int i = 0; i < line->count; i++, child = next_shown (self, child))
    {
      int wide = width_in (self, line, child, width), start = mirrored ? width - x - wide : x;

      gtk_widget_size_allocate (child, &(GtkAllocation){ start, y, wide, height }, -1);
      x += wide + self->spacing;
    }
}

static void
rw_wrap_box_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  RwWrapBox *self = RW_WRAP_BOX (widget);
  Line line = line_from (self, next_shown (self, NULL), width);
  int y = 0;

  while (line.first != NULL)
    {
      GtkWidget *next = after_line (self, &line);
      int high = next != NULL ? height_in (self, &line, width, FALSE) : MAX (height - y, 0);

      place_line (self, &line, y, width, high);
      y += high;
      line = line_from (self, next, width);
    }
}

static GtkSizeRequestMode
rw_wrap_box_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

/* ---- making and unmaking ---- */

static void
rw_wrap_box_dispose (GObject *object)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
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
rw_wrap_box_new_empty (int spacing)
{
  RwWrapBox *self = g_object_new (RW_TYPE_WRAP_BOX, NULL);

  self->spacing = spacing;
  return GTK_WIDGET (self);
}

GtkWidget *
rw_wrap_box_new (GtkWidget *first, GtkWidget *second)
{
  GtkWidget *self = rw_wrap_box_new_empty (SPACING);

  rw_wrap_box_append (RW_WRAP_BOX (self), first);
  rw_wrap_box_append (RW_WRAP_BOX (self), second);
  return self;
}

void
rw_wrap_box_append (RwWrapBox *self, GtkWidget *child)
{
  gtk_widget_set_parent (child, GTK_WIDGET (self));
}
