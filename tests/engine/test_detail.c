/* Small pictures of what a number measures. */
#include "draw/detail.h"

#include <math.h>

#include "random_design.h"

static const char *const shown[] = {
  "rim.outer_diameter", "rim.height", "headstock.angle", "headstock.length", "bridge.height", "hooks.count",
  "nut.width", "neck.set_height", "joint.heel_depth", "shoes.stand_off", "scale.length", "hoop.height",
};

/* Its part is shown where no drawing has the number. */
static const char *const parts[] = { "head.density", "hoop.material", "frets.crown_width", "rim.mitre_error" };

static const char *const nothing[] = { "setup.humidity_low", "shop.kerf" };

static RwDetail *
detail_of (const char *id, const RwResult *result)
{
  int param = rw_param_find (id);

  g_assert_cmpint (param, >=, 0);
  return rw_detail_new ((RwSubject){ param, -1 }, result, RW_STYLE_FILE);
}

static RwResult *
solved (const RwDesign *design)
{
  RwResult *result = g_new (RwResult, 1);

  rw_solve (design, NULL, result);
  return result;
}

static RwResult *
default_build (void)
{
  RwDesign *design = g_new (RwDesign, 1);
  RwResult *result;

  rw_design_init (design);
  result = solved (design);
  g_free (design);
  return result;
}

static void
test_own_dimension_alone (void)
{
  g_autofree RwResult *result = default_build ();

  for (guint i = 0; i < G_N_ELEMENTS (shown); i++)
    {
      g_autoptr (RwDetail) detail = detail_of (shown[i], result);
      RwSubject subject = { rw_param_find (shown[i]), -1 };
      gboolean lettered = FALSE;

      g_test_message ("%s", shown[i]);
      g_assert_nonnull (detail);
      for (guint j = 0; j < detail->sheet->items->len; j++)
        {
          const RwItem *item = &g_array_index (detail->sheet->items, RwItem, j);

          if (item->kind == RW_ITEM_PATH)
            continue;
          g_assert_true (rw_subject_same (item->subject, subject));
          lettered = TRUE;
        }
      g_assert_true (lettered);
    }
}

static void
test_part_instead (void)
{
  g_autofree RwResult *result = default_build ();

  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    {
      g_autoptr (RwDetail) detail = detail_of (parts[i], result);

      g_test_message ("%s", parts[i]);
      g_assert_nonnull (detail);
      g_assert_cmpuint (detail->items->len, >, 0);
    }
  for (guint i = 0; i < G_N_ELEMENTS (nothing); i++)
    g_assert_null (detail_of (nothing[i], result));
}

/* Whatever is shown is marked, and looked at: the box is finite and on the sheet. */
static void
test_any_build (void)
{
  RwDesign *design = g_new (RwDesign, 1);

  for (int round = 0; round < 8; round++)
    {
      g_autofree RwResult *result = NULL;

      random_design (design);
      result = solved (design);
      for (int param = 0; param < RW_PARAM_COUNT; param++)
        {
          g_autoptr (RwDetail) detail = rw_detail_new ((RwSubject){ param, -1 }, result, RW_STYLE_FILE);

          if (detail == NULL)
            continue;
          g_assert_cmpuint (detail->items->len, >, 0);
          g_assert_true (isfinite (detail->box.x0) && isfinite (detail->box.y1));
          g_assert_cmpfloat (detail->box.x0, <=, detail->box.x1);
          g_assert_cmpfloat (detail->box.y0, <=, detail->box.y1);
        }
    }
  g_free (design);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/detail/own-dimension-alone", test_own_dimension_alone);
  g_test_add_func ("/detail/part-instead", test_part_instead);
  g_test_add_func ("/detail/any-build", test_any_build);
  return g_test_run ();
}
