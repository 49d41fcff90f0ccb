/* The ledger: what is let in, what the mean is, what reaches the solver. */
#include "project/ledger.h"

#include <math.h>

#include "table/param.h"

static void
put (RwLedger *ledger, const char *id, double reading, const char *note)
{
  g_autoptr (GError) error = NULL;

  rw_ledger_put (ledger, id, &reading, 1, "2026-05-04", note, &error);
  g_assert_no_error (error);
}

/* A new entry goes to the end, one for the same id to the place of the old. */
static void
test_order (void)
{
  g_autoptr (RwLedger) ledger = rw_ledger_new ();
  const RwEntry *entry;

  put (ledger, "rim.outer_diameter", 279.2, "");
  put (ledger, "rim.wall", 13.8, "");
  put (ledger, "rim.outer_diameter", 278.9, "after sanding");

  g_assert_cmpuint (ledger->entries->len, ==, 2);
  entry = g_ptr_array_index (ledger->entries, 0);
  g_assert_cmpstr (entry->id, ==, "rim.outer_diameter");
  g_assert_cmpstr (entry->note, ==, "after sanding");
  g_assert_cmpstr (entry->date, ==, "2026-05-04");
  g_assert_cmpfloat (rw_entry_mean (entry), ==, 278.9);
  g_assert_true (rw_ledger_find (ledger, "rim.outer_diameter") == entry);

  g_assert_true (rw_ledger_remove (ledger, "rim.outer_diameter"));
  g_assert_false (rw_ledger_remove (ledger, "rim.outer_diameter"));
  g_assert_null (rw_ledger_find (ledger, "rim.outer_diameter"));
  g_assert_cmpuint (ledger->entries->len, ==, 1);
}

typedef struct
{
  const char *name, *id;
  double      readings[3];
  guint       count;
  const char *date;
  int         code;
} Refusal;

static const Refusal refusals[] = {
  { "unknown-id", "rim.outer_diametre", { 279 }, 1, "", RW_PARAM_ERROR_UNKNOWN },
  { "unknown-index", "frets.position[99]", { 100 }, 1, "", RW_PARAM_ERROR_UNKNOWN },
  { "chosen", "build.handed", { 1 }, 1, "", RW_PARAM_ERROR_VALUE },
  { "course-without-number", "rim.course_thickness", { 20 }, 1, "", RW_PARAM_ERROR_VALUE },
  { "above-range", "rim.wall", { 14, 51 }, 2, "", RW_PARAM_ERROR_RANGE },
  { "not-finite", "rim.wall", { 14, NAN, 14 }, 3, "", RW_PARAM_ERROR_RANGE },
  { "infinite", "hooks.leg", { INFINITY }, 1, "", RW_PARAM_ERROR_RANGE },
  { "no-reading", "rim.wall", { 14 }, 0, "", RW_PARAM_ERROR_VALUE },
  { "date-order", "rim.wall", { 14 }, 1, "04.05.2026", RW_PARAM_ERROR_VALUE },
  { "date-of-no-day", "rim.wall", { 14 }, 1, "2026-02-30", RW_PARAM_ERROR_VALUE },
  { "date-negative", "rim.wall", { 14 }, 1, "-226-02-10", RW_PARAM_ERROR_VALUE },
  { "date-with-tail", "rim.wall", { 14 }, 1, "2026-02-10T", RW_PARAM_ERROR_VALUE },
  { "date-short", "rim.wall", { 14 }, 1, "2026-2-10", RW_PARAM_ERROR_VALUE },
};

/* Refused, and the entry that was there stays. */
static void
test_refusal (gconstpointer data)
{
  const Refusal *refusal = data;
  g_autoptr (RwLedger) ledger = rw_ledger_new (), before = NULL;
  g_autoptr (GError) error = NULL;

  put (ledger, "rim.wall", 13.8, "");
  before = rw_ledger_copy (ledger);
  g_assert_false (rw_ledger_put (ledger, refusal->id, refusal->readings, refusal->count, refusal->date, "",
                                 &error));
  g_assert_error (error, RW_PARAM_ERROR, refusal->code);
  g_assert_true (rw_ledger_equal (ledger, before));
}

/* Three readings of which the mean is a round number; and readings at the end of the range, whose sum
 * rounds up: 3 x 0.3 / 3 must not pass 0.3, the least slot width. */
static void
test_mean (void)
{
  const double spread[] = { 13.5, 14.25, 14.25 }, end[] = { 0.3, 0.3, 0.3 };
  g_autoptr (RwLedger) ledger = rw_ledger_new ();
  g_autofree RwMeasured *measured = g_new (RwMeasured, 1);

  g_assert_true (rw_ledger_put (ledger, "rim.wall", spread, 3, "", NULL, NULL));
  g_assert_true (rw_ledger_put (ledger, "frets.slot_width", end, 3, NULL, "", NULL));
  g_assert_cmpfloat (rw_entry_mean (rw_ledger_find (ledger, "rim.wall")), ==, 14);
  g_assert_cmpfloat (rw_entry_mean (rw_ledger_find (ledger, "frets.slot_width")), ==, 0.3);

  rw_measured_init (measured);
  rw_ledger_fill (ledger, measured);
  g_assert_cmpfloat (measured->param[RW_P_rim_wall], ==, 14);
  g_assert_cmpfloat (measured->param[RW_P_frets_slot_width], ==, 0.3);
}

/* Several readings at once, in the units and with the decimal mark of the hand; an inch is 25.4 mm. */
static void
test_readings_as_text (void)
{
  const RwStyle inches = { RW_UNITS_INCH, '.' }, commas = { RW_UNITS_MM, ',' };
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) two = rw_readings_read ("rim.wall", "0.5; 14 mm", inches, &error);
  g_autoptr (GArray) three = rw_readings_read ("rim.wall", "13,5; 14,25;14", commas, &error);
  g_autoptr (RwLedger) ledger = rw_ledger_new ();
  g_autofree char *text = NULL;

  g_assert_no_error (error);
  g_assert_cmpuint (two->len, ==, 2);
  g_assert_cmpfloat_with_epsilon (g_array_index (two, double, 0), 12.7, 1e-12);
  g_assert_cmpfloat (g_array_index (two, double, 1), ==, 14);
  g_assert_cmpuint (three->len, ==, 3);

  g_assert_true (rw_ledger_put (ledger, "rim.wall", (const double *) (const void *) three->data, 3, "", "", NULL));
  g_assert_cmpfloat (rw_entry_spread (rw_ledger_find (ledger, "rim.wall")), ==, 0.75);
  text = rw_readings_write (rw_ledger_find (ledger, "rim.wall"), commas);
  g_assert_cmpstr (text, ==, "13,5; 14,25; 14");
}

static void
test_readings_refused (void)
{
  static const struct
  {
    const char *id, *text;
  } cases[] = {
    { "rim.wall", "" }, { "rim.wall", "14;" }, { "rim.wall", "14; ; 15" }, { "rim.wall", "14; x" },
    { "rim.wall", "14 N" }, { "rim.colour", "1" }, { "build.handed", "1" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_null (rw_readings_read (cases[i].id, cases[i].text, RW_STYLE_FILE, &error));
      g_assert_nonnull (error);
    }
}

/* A parameter, a course, a dimension, and an id that is both. */
static void
test_fill (void)
{
  g_autoptr (RwLedger) ledger = rw_ledger_new ();
  g_autofree RwMeasured *measured = g_new (RwMeasured, 1);

  put (ledger, "rim.wall", 13.8, "");
  put (ledger, "rim.course_thickness[2]", 23.7, "");
  put (ledger, "frets.position[7]", 216.1, "");
  put (ledger, "neck.angle", 2.75, "");
  rw_measured_init (measured);
  rw_ledger_fill (ledger, measured);

  g_assert_cmpfloat (measured->param[RW_P_rim_wall], ==, 13.8);
  g_assert_cmpfloat (measured->course_thickness[1], ==, 23.7);
  g_assert_cmpfloat (measured->slot[RW_FRETS_POSITION + 7], ==, 216.1);
  g_assert_cmpfloat (measured->param[RW_P_neck_angle], ==, 2.75);
  g_assert_true (isnan (measured->course_thickness[0]));
  g_assert_true (isnan (measured->param[RW_P_rim_height]));
}

static void
test_copy (void)
{
  g_autoptr (RwLedger) ledger = rw_ledger_new (), copy = NULL;

  put (ledger, "rim.wall", 13.8, "by calliper");
  copy = rw_ledger_copy (ledger);
  g_assert_true (rw_ledger_equal (ledger, copy));
  put (copy, "rim.wall", 13.8, "by rule");
  g_assert_false (rw_ledger_equal (ledger, copy));
  put (copy, "rim.wall", 13.9, "by calliper");
  g_assert_false (rw_ledger_equal (ledger, copy));
  put (copy, "rim.wall", 13.8, "by calliper");
  g_assert_true (rw_ledger_equal (ledger, copy));
  put (copy, "hooks.leg", 71, "");
  g_assert_false (rw_ledger_equal (ledger, copy));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ledger/order", test_order);
  g_test_add_func ("/ledger/mean", test_mean);
  g_test_add_func ("/ledger/readings-as-text", test_readings_as_text);
  g_test_add_func ("/ledger/readings-refused", test_readings_refused);
  g_test_add_func ("/ledger/fill", test_fill);
  g_test_add_func ("/ledger/copy", test_copy);
  for (guint i = 0; i < G_N_ELEMENTS (refusals); i++)
    {
      g_autofree char *path = g_strconcat ("/ledger/refuse/", refusals[i].name, NULL);

      g_test_add_data_func (path, &refusals[i], test_refusal);
    }
  return g_test_run ();
}
