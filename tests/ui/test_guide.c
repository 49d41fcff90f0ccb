/* The guide's text: its marks, its pictures, and the same course in every language. */
#include "window/guide_text.h"

#include "draw/drawing.h"

static char *
text_of (const char *name)
{
  g_autofree char *path = g_test_build_filename (G_TEST_DIST, "..", "data", "guide", name, NULL);
  g_autoptr (GError) error = NULL;
  char *text = NULL;

  g_file_get_contents (path, &text, NULL, &error);
  g_assert_no_error (error);
  return text;
}

static const RwBlock *
block_at (GPtrArray *blocks, guint i)
{
  g_assert_cmpuint (i, <, blocks->len);
  return g_ptr_array_index (blocks, i);
}

static void
test_marks (void)
{
  g_autoptr (GPtrArray) blocks = rw_guide_read ("# Title\n\nFirst **bold\nwords** & more.\nEnd.\n\n- one\n  goes on\n"
                                                "2. two\n\n> Hot\n> glue\n\n![A pot](view:pot)\n## Next\n");

  g_assert_cmpuint (blocks->len, ==, 7);
  g_assert_cmpint (block_at (blocks, 0)->kind, ==, RW_BLOCK_CHAPTER);
  g_assert_cmpstr (block_at (blocks, 0)->text, ==, "Title");
  g_assert_cmpstr (block_at (blocks, 1)->text, ==, "First <b>bold words</b> &amp; more. End.");
  g_assert_cmpstr (block_at (blocks, 2)->text, ==, "one goes on");
  g_assert_cmpint (block_at (blocks, 2)->number, ==, 0);
  g_assert_cmpint (block_at (blocks, 3)->number, ==, 2);
  g_assert_cmpint (block_at (blocks, 4)->kind, ==, RW_BLOCK_CAUTION);
  g_assert_cmpstr (block_at (blocks, 4)->text, ==, "Hot glue");
  g_assert_cmpint (block_at (blocks, 5)->view, ==, RW_VIEW_POT);
  g_assert_cmpstr (block_at (blocks, 5)->text, ==, "A pot");
  g_assert_cmpstr (block_at (blocks, 6)->text, ==, "Next");
}

static void
test_unknown_view (void)
{
  g_autoptr (GPtrArray) blocks = rw_guide_read ("![x](view:nothing)");

  g_assert_cmpint (block_at (blocks, 0)->view, ==, -1);
}

/* Block by block the same as the English guide, with the same pictures. */
static void
test_language (gconstpointer name)
{
  g_autofree char *english = text_of ("guide.en.md"), *other = text_of (name);
  g_autoptr (GPtrArray) as = rw_guide_read (english), bs = rw_guide_read (other);

  for (guint i = 0; i < as->len; i++)
    {
      const RwBlock *a = block_at (as, i), *b = block_at (bs, i);

      g_test_message ("%s", b->text);
      g_assert_cmpint (a->kind, ==, b->kind);
      g_assert_cmpint (a->view, ==, b->view);
      g_assert_cmpint (b->view, >=, 0);
      g_assert_cmpint (a->number, ==, b->number);
    }
  g_assert_cmpuint (as->len, ==, bs->len);
}

int
main (int argc, char **argv)
{
  static const char *const languages[] = { "guide.de.md", "guide.en.md", "guide.fr.md" };

  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/guide/marks", test_marks);
  g_test_add_func ("/guide/unknown-view", test_unknown_view);
  for (guint i = 0; i < G_N_ELEMENTS (languages); i++)
    {
      g_autofree char *path = g_strconcat ("/guide/", languages[i], NULL);

      g_test_add_data_func (path, languages[i], test_language);
    }
  return g_test_run ();
}
