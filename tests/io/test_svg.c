/* SVG of all papers: one group for each layer, by a reader of XML, and the same picture as the PNG, by librsvg. */
#include "io/export_png.h"
#include "io/export_svg.h"
#include "io/paper_set.h"
#include "built.h"
#include "random_design.h"
#include "read_back.h"

#include <glib/gstdio.h>
#include <math.h>
#include <string.h>

#define DPI 100

/* ---- papers, piece by piece and page by page ---- */

typedef void (*Check) (const RwPage *page);

static void
check_pages (const GPtrArray *pages, Check check)
{
  for (guint i = 0; i < pages->len; i++)
    {
      const RwPaperPage *page = g_ptr_array_index (pages, i);
      RwPage picture = rw_paper_page_picture (page);

      g_test_message ("%s, %s", page->kind->id, page->label);
      check (&picture);
    }
}

static void
check_design (const RwDesign *design, const char **only, Check check)
{
  RwPapersOptions options = { .paper = rw_paper_find ("a4"), .only = only,
                              .style = RW_STYLE_FILE, .date = "2026-05-04" };
  g_autoptr (RwProject) project = rw_project_new ();

  project->design = *design;

  g_autoptr (RwPaperSet) set = rw_paper_set_new (project, &options, NULL);

  g_assert_nonnull (set);
  check_pages (set->pages, check);
  check_pages (set->pieces, check);
}

static const char *const builds[] = {
  "", "rim.construction=staves|joint.kind=stick", "rim.construction=plies|build.handed=left", "frets.count=0",
  "fifth.route=tunnel|frets.count=24",
};

static void
check_builds (const char **only, Check check)
{
  for (guint i = 0; i < G_N_ELEMENTS (builds); i++)
    {
      g_autoptr (Built) built = built_new (builds[i]);

      g_test_message ("%s", builds[i]);
      check_design (&built->design, only, check);
    }
}

/* ---- groups ---- */

typedef struct
{
  GHashTable *ids;    /* of everything */
  GPtrArray  *groups; /* ids, those inside a layer too */
  GPtrArray  *titles; /* of groups */
  GPtrArray  *masks;  /* asked for */
  GPtrArray  *path;   /* of elements, to where the reader is */
} Reading;

static void
read_start (GMarkupParseContext *context,
            const char          *element,
            const char         **names,
            const char         **values,
            gpointer             data,
            GError             **error)
{
  Reading *reading = data;
  const char *id = NULL;

  for (int i = 0; names[i] != NULL; i++)
    {
      if (g_str_equal (names[i], "id"))
        id = values[i];
      if (g_str_equal (names[i], "mask"))
        g_ptr_array_add (reading->masks, g_strdup (values[i]));
    }
  if (id != NULL)
    g_assert_true (g_hash_table_add (reading->ids, g_strdup (id))); /* no other has it */
  if (g_str_equal (element, "g"))
    {
      g_assert_nonnull (id);
      g_assert_cmpuint (reading->path->len, ==, 1); /* directly in the picture */
      g_ptr_array_add (reading->groups, g_strdup (id));
    }
  g_ptr_array_add (reading->path, g_strdup (element));
}

static void
read_text (GMarkupParseContext *context, const char *text, gsize length, gpointer data, GError **error)
{
  Reading *reading = data;
  guint depth = reading->path->len;

  if (depth > 1 && g_str_equal (g_ptr_array_index (reading->path, depth - 1), "title")
      && g_str_equal (g_ptr_array_index (reading->path, depth - 2), "g"))
    g_ptr_array_add (reading->titles, g_strndup (text, length));
}

static void
read_end (GMarkupParseContext *context, const char *element, gpointer data, GError **error)
{
  Reading *reading = data;

  g_ptr_array_set_size (reading->path, (int) reading->path->len - 1);
}

static gboolean
is_layer (const char *id, const char *title)
{
  for (int layer = 0; layer < RW_LAYER_COUNT; layer++)
    if (g_str_equal (id, rw_layer_id ((RwLayer) layer)))
      return g_str_equal (title, rw_layer_title ((RwLayer) layer));
  return FALSE;
}

static void
assert_groups (const Reading *reading)
{
  g_assert_cmpuint (reading->groups->len, >, 1);
  g_assert_cmpuint (reading->titles->len, ==, reading->groups->len);
  for (guint i = 0; i < reading->groups->len; i++)
    g_assert_true (is_layer (g_ptr_array_index (reading->groups, i), g_ptr_array_index (reading->titles, i)));
  for (guint i = 0; i < reading->masks->len; i++)
    {
      const char *mask = g_ptr_array_index (reading->masks, i);
      g_autofree char *id = g_strndup (mask + strlen ("url(#"), strlen (mask) - strlen ("url(#)"));

      g_assert_true (g_hash_table_contains (reading->ids, id));
    }
}

static void
check_groups (const RwPage *page)
{
  static const GMarkupParser parser = { read_start, read_end, read_text, NULL, NULL };
  g_autofree char *svg = rw_svg_write (page, &rw_palette_print);
  g_autoptr (GHashTable) ids = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  g_autoptr (GPtrArray) groups = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GPtrArray) titles = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GPtrArray) masks = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GPtrArray) path = g_ptr_array_new_with_free_func (g_free);
  Reading reading = { ids, groups, titles, masks, path };
  GMarkupParseContext *context = g_markup_parse_context_new (&parser, 0, &reading, NULL);
  g_autoptr (GError) error = NULL;

  g_markup_parse_context_parse (context, svg, -1, &error);
  g_assert_no_error (error);
  g_markup_parse_context_end_parse (context, &error);
  g_assert_no_error (error);
  g_markup_parse_context_free (context);
  assert_groups (&reading);
}

static void
test_groups (void)
{
  check_builds (NULL, check_groups);
}

static void
test_groups_of_random (void)
{
  for (int i = 0; i < 12; i++)
    {
      g_autoptr (Built) built = built_new ("");

      random_design_near (&built->design, 12);
      check_design (&built->design, NULL, check_groups);
    }
}

/* ---- the picture ---- */

/* Without its lettering, which two programs never set alike. */
static RwPage
unlettered (const RwPage *page, RwPagePart *parts, RwLayout *layouts, GArray *no_texts)
{
  RwPage bare = *page;

  for (int i = 0; i < page->count; i++)
    {
      layouts[i] = *page->parts[i].layout;
      layouts[i].texts = no_texts;
      parts[i] = (RwPagePart){ &layouts[i], page->parts[i].origin };
    }
  bare.parts = parts;
  return bare;
}

static cairo_surface_t *
render_svg (const char *svg)
{
  g_autofree char *folder = g_dir_make_tmp ("rimwright-svg-XXXXXX", NULL);
  g_autofree char *from = g_build_filename (folder, "a.svg", NULL), *to = g_build_filename (folder, "a.png", NULL);
  g_autofree char *command
      = g_strdup_printf ("rsvg-convert -d %d -p %d -b white -o '%s' '%s'", DPI, DPI, to, from);
  cairo_surface_t *picture;
  int status;

  g_assert_true (g_file_set_contents (from, svg, -1, NULL));
  g_assert_true (g_spawn_command_line_sync (command, NULL, NULL, &status, NULL));
  g_assert_cmpint (status, ==, 0);
  picture = cairo_image_surface_create_from_png (to);
  g_assert_cmpint (cairo_surface_status (picture), ==, CAIRO_STATUS_SUCCESS);
  g_remove (from);
  g_remove (to);
  g_rmdir (folder);
  return picture;
}

static cairo_surface_t *
render_png (const RwPage *page)
{
  g_autofree char *folder = g_dir_make_tmp ("rimwright-svg-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "a.png", NULL);
  g_autoptr (GBytes) bytes = rw_png_write (page, &rw_palette_print, DPI, NULL);
  cairo_surface_t *picture;

  g_assert_true (g_file_set_contents (path, g_bytes_get_data (bytes, NULL), (gssize) g_bytes_get_size (bytes), NULL));
  picture = cairo_image_surface_create_from_png (path);
  g_remove (path);
  g_rmdir (folder);
  return picture;
}

/* Pictures are compared in squares by the mean of their green, which every ink and tint has: that something has come or
 * gone shows, that edges are smoothed otherwise does not. */
#define SQUARE 6 /* pixels */
#define FAR 24   /* of 255 */
/* Where thin lines cross at the edge of a mask they are smoothed twice.  Without the masks of the general arrangement
 * more than a hundred squares are out. */
#define SQUARES_OUT 8

static int
mean_of_square (cairo_surface_t *picture, int left, int top)
{
  int sum = 0;

  for (int y = top; y < top + SQUARE; y++)
    {
      const guint32 *row = (const guint32 *) (const void *) (cairo_image_surface_get_data (picture)
                                                             + y * cairo_image_surface_get_stride (picture));

      for (int x = left; x < left + SQUARE; x++)
        sum += (int) (row[x] >> 8 & 0xff);
    }
  return sum / (SQUARE * SQUARE);
}

static void
assert_same_picture (cairo_surface_t *a, cairo_surface_t *b)
{
  int width = MIN (cairo_image_surface_get_width (a), cairo_image_surface_get_width (b));
  int height = MIN (cairo_image_surface_get_height (a), cairo_image_surface_get_height (b));
  int out = 0, farthest = 0;

  g_assert_cmpint (abs (cairo_image_surface_get_width (a) - cairo_image_surface_get_width (b)), <=, 1);
  g_assert_cmpint (abs (cairo_image_surface_get_height (a) - cairo_image_surface_get_height (b)), <=, 1);
  for (int y = 0; y + SQUARE <= height; y += SQUARE)
    for (int x = 0; x + SQUARE <= width; x += SQUARE)
      {
        int off = abs (mean_of_square (a, x, y) - mean_of_square (b, x, y));

        farthest = MAX (farthest, off);
        out += off > FAR;
      }
  g_test_message ("%d squares are out, the farthest by %d", out, farthest);
  g_assert_cmpint (out, <=, SQUARES_OUT);
}

static void
check_picture (const RwPage *page)
{
  g_autoptr (GArray) no_texts = g_array_new (FALSE, FALSE, sizeof (RwPlacedText));
  RwPagePart parts[4];
  RwLayout layouts[4];
  RwPage bare = unlettered (page, parts, layouts, no_texts);
  g_autofree char *svg = rw_svg_write (&bare, &rw_palette_print);
  cairo_surface_t *from_svg = render_svg (svg), *from_png = render_png (&bare);

  assert_same_picture (from_svg, from_png);
  cairo_surface_destroy (from_svg);
  cairo_surface_destroy (from_png);
}

static void
test_picture (void)
{
  static const char *only[] = { "general", "heel", "neck-side", "headstock", NULL };
  g_autofree char *program = g_find_program_in_path ("rsvg-convert");

  if (program == NULL)
    {
      g_test_skip ("librsvg's program is not installed");
      return;
    }
  check_builds (only, check_picture);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/svg/groups", test_groups);
  g_test_add_func ("/svg/groups/random", test_groups_of_random);
  g_test_add_func ("/svg/picture", test_picture);
  return g_test_run ();
}
