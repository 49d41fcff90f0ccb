#include <math.h>
#include <string.h>

#include "table/material.h"
#include "table/param.h"
#include "random_design.h"

#define ROUNDS 100

static void
test_rows (void)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);

  for (int i = 0; i < RW_PARAM_COUNT; i++)
    {
      const RwParam *param = rw_param ((RwParamId) i);

      g_test_message ("%s", param->id);
      g_assert_true (g_hash_table_add (ids, (gpointer) param->id));
      g_assert_cmpint (rw_param_find (param->id), ==, i);
      g_assert_true (*param->label != '\0' && *param->meaning != '\0' && *param->group != '\0');
      g_assert_true ((param->options != NULL) == (param->kind == RW_KIND_CHOICE));
      if (rw_param_is_number (param))
        g_assert_true (param->min < param->max && param->step > 0);
      else
        g_assert_true (param->min == 0 && param->max == 0 && param->step == 0);
    }
  g_assert_cmpint (rw_param_find ("scale"), ==, -1);
  g_assert_cmpint (rw_param_find (""), ==, -1);
}

/* A group is a run of rows that share one pointer. */
static void
test_groups (void)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);
  const char            *group = NULL;

  for (int i = 0; i < RW_PARAM_COUNT; i++)
    if (rw_param ((RwParamId) i)->group != group)
      {
        group = rw_param ((RwParamId) i)->group;
        g_assert_true (g_hash_table_add (seen, (gpointer) group));
      }
  g_assert_cmpstr (rw_param (RW_P_rim_wall)->group, ==, "Rim");
  g_assert_cmpstr (rw_param (RW_P_build_handed)->group, ==, "Build");
  g_assert_cmpstr (rw_param (RW_P_shop_shellac_cut)->group, ==, "Shop");
  /* The limits of the checks are the last thing that a form shows. */
  for (int i = 0; i < RW_PARAM_COUNT; i++)
    g_assert_true (rw_param_is_limit (rw_param ((RwParamId) i)) == (i >= RW_P_tolerance_action));
}

static void
test_initial (void)
{
  RwDesign design, again;

  memset (&design, 0xff, sizeof design);
  memset (&again, 0x55, sizeof again);
  rw_design_init (&design);
  rw_design_init (&again);
  g_assert_cmpmem (&design, sizeof design, &again, sizeof again);
  g_assert_cmpfloat (design.scale_length, ==, 650);
  g_assert_cmpint (design.build_handed, ==, RW_HANDED_RIGHT);
  g_assert_cmpint (design.head_tap_mode, ==, RW_MODE_11);
  g_assert_cmpstr (rw_woods[design.neck_wood].id, ==, "maple_hard");
  g_assert_cmpstr (rw_metals[design.hoop_material].id, ==, "brass_cartridge_annealed");
  g_assert_cmpstr (rw_threads[design.hooks_thread].id, ==, "8-32");
  g_assert_cmpint (design.rim_course_thickness.count, ==, 3);
  g_assert_cmpfloat (design.rim_course_thickness.at[2], ==, 24);
  g_assert_cmpstr (rw_woods[design.rim_course_wood.at[1]].id, ==, "cherry_black");
}

/* Names of places that the code uses stand for the words in the table. */
static void
test_choice_names (void)
{
  static const struct
  {
    RwParamId   id;
    int         place;
    const char *word;
  } names[] = {
    { RW_P_build_handed, RW_HANDED_LEFT, "left" },
    { RW_P_scale_square_to, RW_SQUARE_TO_STRINGS, "strings" },
    { RW_P_fifth_route, RW_ROUTE_TUNNEL, "tunnel" },
    { RW_P_neck_solve_for, RW_SOLVE_ANGLE, "angle" },
    { RW_P_neck_solve_for, RW_SOLVE_BRIDGE, "bridge" },
    { RW_P_neck_solve_for, RW_SOLVE_ACTION, "action" },
    { RW_P_rim_construction, RW_RIM_SEGMENTS, "segments" },
    { RW_P_rim_construction, RW_RIM_STAVES, "staves" },
    { RW_P_rim_construction, RW_RIM_PLIES, "plies" },
    { RW_P_head_material, RW_HEAD_SKIN, "skin" },
    { RW_P_head_tension_from, RW_TENSION_FROM_TAP, "tap_frequency" },
    { RW_P_head_tap_mode, RW_MODE_01, "01" },
    { RW_P_head_tap_mode, RW_MODE_21, "21" },
    { RW_P_hoop_seat, RW_SEAT_GROOVE, "groove" },
    { RW_P_hooks_layout, RW_LAYOUT_SIDES, "sides" },
    { RW_P_hooks_first, RW_FIRST_NECK_TAKES_ONE, "neck_takes_one" },
    { RW_P_joint_kind, RW_JOINT_STICK, "stick" },
    { RW_P_neck_rod_present, RW_YES, "yes" },
    { RW_P_strings_slip, RW_NO, "no" },
  };
  RwDesign design;

  rw_design_init (&design);
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_assert_true (rw_design_read (&design, names[i].id, names[i].word, RW_STYLE_FILE, NULL));
      g_assert_cmpint (G_STRUCT_MEMBER (int, &design, rw_param (names[i].id)->offset), ==, names[i].place);
    }
}

/* Files give every design back to the last bit. */
static void
test_files_are_exact (void)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      RwDesign design, read;

      random_design (&design);
      rw_design_init (&read);
      for (int i = 0; i < RW_PARAM_COUNT; i++)
        {
          g_autoptr (GError) error = NULL;
          g_autofree char   *text = rw_design_write (&design, (RwParamId) i, RW_STYLE_FILE);
          g_autofree char   *again = NULL;

          rw_design_read (&read, (RwParamId) i, text, RW_STYLE_FILE, &error);
          g_assert_no_error (error);
          g_assert_true (rw_design_same (&design, &read, (RwParamId) i));
          again = rw_design_write (&read, (RwParamId) i, RW_STYLE_FILE);
          g_assert_cmpstr (again, ==, text);
        }
      g_assert_true (rw_design_equal (&design, &read));
    }
}

static void
assert_close (double a, double b, double slack)
{
  g_assert_cmpfloat (fabs (a - b), <=, slack);
}

static void
assert_close_strings (const RwStringSet *a, const RwStringSet *b, double slack)
{
  g_assert_cmpint (a->count, ==, b->count);
  for (int i = 0; i < a->count; i++)
    {
      g_assert_cmpstr (a->at[i].note, ==, b->at[i].note);
      assert_close (a->at[i].outer_mm, b->at[i].outer_mm, slack);
      assert_close (a->at[i].core_mm, b->at[i].core_mm, slack);
      g_assert_cmpfloat (a->at[i].wrap_kg_m3, ==, b->at[i].wrap_kg_m3);
      g_assert_cmpfloat (a->at[i].mass_kg_m, ==, b->at[i].mass_kg_m);
      g_assert_cmpint (a->at[i].is_short, ==, b->at[i].is_short);
    }
}

static void
assert_close_param (const RwDesign *a, const RwDesign *b, RwParamId id, double slack)
{
  switch (rw_param (id)->kind)
    {
    case RW_KIND_STRING_SET:
      assert_close_strings (&a->strings_set, &b->strings_set, slack);
      break;
    case RW_KIND_LENGTH_LIST:
      g_assert_cmpint (a->rim_course_thickness.count, ==, b->rim_course_thickness.count);
      for (int i = 0; i < a->rim_course_thickness.count; i++)
        assert_close (a->rim_course_thickness.at[i], b->rim_course_thickness.at[i], slack);
      break;
    case RW_KIND_CENTS_LIST:
      g_assert_cmpint (a->frets_temperament.count, ==, b->frets_temperament.count);
      for (int i = 0; i < a->frets_temperament.count; i++)
        assert_close (a->frets_temperament.at[i], b->frets_temperament.at[i], slack);
      break;
    case RW_KIND_LENGTH:
      assert_close (rw_design_get (a, id), rw_design_get (b, id), slack);
      break;
    default:
      g_assert_true (rw_design_same (a, b, id));
    }
}

/* People's text gives it back too: exactly in millimetres and where it is no length; in inches to the six
 * digits that are shown, 0.00005 in = 0.00127 mm. */
static void
check_style (RwStyle style)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      RwDesign design, read;

      random_design (&design);
      rw_design_init (&read);
      for (int i = 0; i < RW_PARAM_COUNT; i++)
        {
          g_autoptr (GError) error = NULL;
          g_autofree char   *text = rw_design_write (&design, (RwParamId) i, style);

          rw_design_read (&read, (RwParamId) i, text, style, &error);
          g_assert_no_error (error);
          assert_close_param (&read, &design, (RwParamId) i, style.units == RW_UNITS_MM ? 0 : 0.00128);
        }
    }
}

static void
test_people (void)
{
  static const RwUnits units[] = { RW_UNITS_MM, RW_UNITS_INCH, RW_UNITS_FRACTION };

  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    {
      check_style ((RwStyle){ units[i], '.' });
      check_style ((RwStyle){ units[i], ',' });
    }
}

/* Ends of ranges survive being shown in inches, where rounding could lead outside. */
static void
test_ends_of_ranges (void)
{
  const RwStyle style = { RW_UNITS_INCH, '.' };

  for (int i = 0; i < RW_PARAM_COUNT; i++)
    {
      const RwParam *param = rw_param ((RwParamId) i);
      RwDesign       design;

      if (!rw_param_is_number (param))
        continue;
      rw_design_init (&design);
      for (int end = 0; end < 2; end++)
        {
          g_autoptr (GError) error = NULL;
          g_autofree char   *text = NULL;

          g_assert_true (rw_design_set (&design, (RwParamId) i, end == 0 ? param->min : param->max, NULL));
          text = rw_design_write (&design, (RwParamId) i, style);
          rw_design_read (&design, (RwParamId) i, text, style, &error);
          g_assert_no_error (error);
        }
    }
}

static void
test_written (void)
{
  static const struct
  {
    RwParamId   id;
    const char *typed;
    RwStyle     style;
    const char *written;
  } cases[] = {
    { RW_P_rim_outer_diameter, "11 3/8 in", { RW_UNITS_MM, '.' }, "288.925" },
    { RW_P_rim_outer_diameter, "11 3/8 in", { RW_UNITS_MM, ',' }, "288,925" },
    { RW_P_rim_outer_diameter, "11 3/8", { RW_UNITS_INCH, '.' }, "11.375" },
    { RW_P_rim_outer_diameter, "11 3/8", { RW_UNITS_FRACTION, '.' }, "11 3/8" },
    { RW_P_rim_outer_diameter, "279 mm", { RW_UNITS_FRACTION, ',' }, "10,9843" },
    { RW_P_neck_set_height, "-1/8", { RW_UNITS_FRACTION, '.' }, "-1/8" },
    { RW_P_setup_temperature, "68 °F", { RW_UNITS_INCH, '.' }, "20" },
    { RW_P_frets_count, "18", { RW_UNITS_INCH, '.' }, "18" },
    { RW_P_neck_set_height, "-0", { RW_UNITS_MM, '.' }, "0" },
    { RW_P_neck_wood, " american Beech ", { RW_UNITS_MM, '.' }, "beech" },
    { RW_P_hoop_material, "mild steel", { RW_UNITS_MM, '.' }, "steel_mild" },
    { RW_P_hooks_thread, "m5", { RW_UNITS_MM, '.' }, "M5" },
    { RW_P_rim_course_thickness, "1 in;20mm ; 5/8\"", { RW_UNITS_MM, '.' }, "25.4; 20; 15.875" },
    { RW_P_rim_course_wood, "beech;Black cherry", { RW_UNITS_MM, '.' }, "beech; cherry_black" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autofree char   *text = NULL;
      RwDesign           design;

      rw_design_init (&design);
      rw_design_read (&design, cases[i].id, cases[i].typed, cases[i].style, &error);
      g_assert_no_error (error);
      text = rw_design_write (&design, cases[i].id, cases[i].style);
      g_assert_cmpstr (text, ==, cases[i].written);
    }
}

typedef struct
{
  RwParamId    id;
  const char  *text;
  RwParamError code;
  const char  *message;
} Refused;

static const Refused refused[] = {
  { RW_P_rim_outer_diameter, "9999", RW_PARAM_ERROR_RANGE,
    "Rim outside diameter: 9999 mm is outside 120 to 450 mm" },
  { RW_P_rim_outer_diameter, "-1 in", RW_PARAM_ERROR_RANGE,
    "Rim outside diameter: -25.4 mm is outside 120 to 450 mm" },
  { RW_P_rim_outer_diameter, "119.999", RW_PARAM_ERROR_RANGE,
    "Rim outside diameter: 119.999 mm is outside 120 to 450 mm" },
  { RW_P_neck_angle, "11", RW_PARAM_ERROR_RANGE, "Neck angle: 11° is outside -3 to 10°" },
  { RW_P_setup_humidity_low, "99", RW_PARAM_ERROR_RANGE, "Driest at home: 99 % is outside 5 to 95 %" },
  { RW_P_hooks_count, "49", RW_PARAM_ERROR_RANGE, "Number of hooks: 49 is outside 4 to 48" },
  { RW_P_hooks_count, "17.5", RW_PARAM_ERROR_RANGE, "Number of hooks: 17.5 is not a whole number" },
  { RW_P_hooks_count, "18 mm", RW_PARAM_ERROR_VALUE, "Number of hooks: “mm” measures something else" },
  { RW_P_scale_length, "abc", RW_PARAM_ERROR_VALUE, "Scale length: “abc” is not a number" },
  { RW_P_scale_length, "nan", RW_PARAM_ERROR_VALUE, "Scale length: “nan” is not a number" },
  { RW_P_build_handed, "both", RW_PARAM_ERROR_VALUE, "Handed: “both” is none of right, left" },
  { RW_P_build_handed, "Right", RW_PARAM_ERROR_VALUE, "Handed: “Right” is none of right, left" },
  { RW_P_build_handed, "right|left", RW_PARAM_ERROR_VALUE, "Handed: “right|left” is none of right, left" },
  { RW_P_neck_wood, "cheese", RW_PARAM_ERROR_VALUE, "Neck wood: “cheese” is not in the table of woods" },
  { RW_P_hoop_material, "oak_red", RW_PARAM_ERROR_VALUE,
    "Hoop material: “oak_red” is not in the table of metals" },
  { RW_P_hooks_thread, "", RW_PARAM_ERROR_VALUE, "Hook thread: “” is not in the table of threads" },
  { RW_P_rim_course_thickness, "20; 121", RW_PARAM_ERROR_RANGE,
    "Course thickness: 121 mm is outside 1 to 120 mm" },
  { RW_P_rim_course_thickness, "20;; 24", RW_PARAM_ERROR_VALUE, "Course thickness: item 2 is empty" },
  { RW_P_rim_course_thickness, "", RW_PARAM_ERROR_RANGE,
    "Course thickness: 0 items, but 1 to 12 are wanted" },
  { RW_P_rim_course_thickness, "1;1;1;1;1;1;1;1;1;1;1;1;1", RW_PARAM_ERROR_RANGE,
    "Course thickness: 13 items, but 1 to 12 are wanted" },
  { RW_P_rim_course_wood, "beech; tin", RW_PARAM_ERROR_VALUE, "Course wood: “tin” is not in the table of woods" },
  { RW_P_neck_wood, "\xff", RW_PARAM_ERROR_VALUE, "Neck wood: the text is not UTF-8" },
};

static void
test_refused (void)
{
  RwDesign before, design;

  random_design (&before);
  design = before;
  for (guint i = 0; i < G_N_ELEMENTS (refused); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_false (rw_design_read (&design, refused[i].id, refused[i].text, RW_STYLE_FILE, &error));
      g_assert_error (error, RW_PARAM_ERROR, (int) refused[i].code);
      g_assert_cmpstr (error->message, ==, refused[i].message);
      g_assert_true (rw_design_equal (&design, &before));
    }
}

static void
test_refused_in_inches (void)
{
  const RwStyle      style = { RW_UNITS_FRACTION, ',' };
  g_autoptr (GError) error = NULL;
  RwDesign           design;

  rw_design_init (&design);
  g_assert_false (rw_design_read (&design, RW_P_rim_outer_diameter, "20 1/2", style, &error));
  g_assert_cmpstr (error->message, ==, "Rim outside diameter: 20 1/2 in is outside 4,72441 to 17,7165 in");
}

static void
test_set (void)
{
  static const double bad[] = { NAN, INFINITY, -INFINITY, 120.5 };
  RwDesign            before, design;

  rw_design_init (&design);
  before = design;
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_false (rw_design_set (&design, RW_P_hooks_count, bad[i], &error));
      g_assert_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_RANGE);
      g_assert_true (rw_design_equal (&design, &before));
    }
  g_assert_true (rw_design_set (&design, RW_P_hooks_count, 24, NULL));
  g_assert_cmpfloat (rw_design_get (&design, RW_P_hooks_count), ==, 24);
  g_assert_true (rw_design_set (&design, RW_P_neck_set_height, -0.0, NULL));
  g_assert_false (signbit (design.neck_set_height));
}

/* Copying each parameter makes equal designs, and touches one parameter at a time. */
static void
test_same_and_copy (void)
{
  RwDesign from, to;

  random_design (&from);
  rw_design_init (&to);
  for (int i = 0; i < RW_PARAM_COUNT; i++)
    {
      RwDesign before = to;

      rw_design_copy (&to, &from, (RwParamId) i);
      g_assert_true (rw_design_same (&to, &from, (RwParamId) i));
      for (int k = 0; k < RW_PARAM_COUNT; k++)
        g_assert_true (k == i || rw_design_same (&to, &before, (RwParamId) k));
    }
  g_assert_true (rw_design_equal (&from, &to));
}

static void
test_kind_names (void)
{
  g_assert_cmpstr (rw_param_kind_name (rw_param (RW_P_scale_length)), ==, "length");
  g_assert_cmpstr (rw_param_kind_name (rw_param (RW_P_hooks_count)), ==, "count");
  g_assert_cmpstr (rw_param_kind_name (rw_param (RW_P_build_handed)), ==, "choice");
  g_assert_cmpstr (rw_param_kind_name (rw_param (RW_P_strings_set)), ==, "list");
  g_assert_cmpstr (rw_param_kind_name (rw_param (RW_P_rim_course_wood)), ==, "list");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/param/table/rows", test_rows);
  g_test_add_func ("/param/table/groups", test_groups);
  g_test_add_func ("/param/table/kind-names", test_kind_names);
  g_test_add_func ("/param/initial", test_initial);
  g_test_add_func ("/param/choice/names", test_choice_names);
  g_test_add_func ("/param/text/files-are-exact", test_files_are_exact);
  g_test_add_func ("/param/text/people", test_people);
  g_test_add_func ("/param/text/ends-of-ranges", test_ends_of_ranges);
  g_test_add_func ("/param/text/written", test_written);
  g_test_add_func ("/param/text/refused", test_refused);
  g_test_add_func ("/param/text/refused-in-inches", test_refused_in_inches);
  g_test_add_func ("/param/set", test_set);
  g_test_add_func ("/param/same-and-copy", test_same_and_copy);
  return g_test_run ();
}
