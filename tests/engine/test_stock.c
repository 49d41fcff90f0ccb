/* What a build needs of stock, what the shelf lacks, and what would help. */
#include <math.h>
#include <string.h>

#include "built.h"
#include "stock/shortage.h"
#include "stock/stock_remedy.h"

static void
solve (const char *changes, RwResult *result)
{
  g_autoptr (Built) built = built_new (changes);

  *result = built->result;
}

static GArray *
demand_of (const char *changes, RwResult *result)
{
  solve (changes, result);
  return rw_demand (result);
}

static const RwPiece *
find (const GArray *pieces, RwPieceUse use)
{
  for (guint i = 0; i < pieces->len; i++)
    if (g_array_index (pieces, RwPiece, i).use == use)
      return &g_array_index (pieces, RwPiece, i);
  return NULL;
}

static int
count (const GArray *pieces, RwPieceUse use)
{
  int sum = 0;

  for (guint i = 0; i < pieces->len; i++)
    if (g_array_index (pieces, RwPiece, i).use == use)
      sum += g_array_index (pieces, RwPiece, i).count;
  return sum;
}

static void
near (double value, double wanted)
{
  g_assert_cmpfloat (fabs (value - wanted), <, 1e-6);
}

/* From the numbers of the model, which have tests of their own: a strip for the whole course, the saw's advance. */
static void
test_segments (void)
{
  RwResult result;
  g_autoptr (GArray) pieces = demand_of ("", &result);
  const RwPiece *piece = find (pieces, RW_PIECE_SEGMENT);

  g_assert_cmpint (count (pieces, RW_PIECE_SEGMENT), ==, 3 * 10);
  near (piece->length + result.used.shop_kerf, result.value[RW_RIM_SEGMENT_FEED]);
  near (piece->count * (piece->length + result.used.shop_kerf) + piece->run, result.value[RW_RIM_COURSE_STRIP]);
  near (piece->width, result.value[RW_RIM_SEGMENT_MIN_WIDTH]);
  near (piece->thickness, 20.6);
  g_assert_cmpstr (piece->material, ==, "beech");
}

static void
test_neck_solid (void)
{
  RwResult result;
  g_autoptr (GArray) pieces = demand_of ("", &result);
  const RwPiece *neck = find (pieces, RW_PIECE_NECK);

  g_assert_cmpint (neck->count, ==, 1);
  near (neck->length, result.value[RW_NECK_BLANK_LENGTH]);
  near (neck->width, result.value[RW_NECK_BLANK_WIDTH]);
  near (neck->thickness, result.value[RW_NECK_BLANK_DEPTH]);
  g_assert_null (find (pieces, RW_PIECE_HEAD));
  g_assert_null (find (pieces, RW_PIECE_HEEL));
}

/* Scarfed and stacked, the shaft is the thickest part of the neck without its board, 24 - 5, and 6 of allowance; the
 * heel, 62 - 5 + 6 in all, then wants 38 mm more: two blocks of 19, and 1 mm of each to plane. */
static void
test_neck_built (void)
{
  RwResult result;
  g_autoptr (GArray) pieces = demand_of ("stock.neck_head=scarfed|stock.neck_heel=stacked", &result);

  near (find (pieces, RW_PIECE_NECK)->thickness, 25);
  near (find (pieces, RW_PIECE_HEEL)->thickness, 20);
  g_assert_cmpint (find (pieces, RW_PIECE_HEEL)->count, ==, 2);
  near (find (pieces, RW_PIECE_NECK)->length, result.value[RW_NECK_BLANK_LENGTH] - 152 * cos (13 * G_PI / 180));
}

static void
test_neck_strips (void)
{
  RwResult result;
  g_autoptr (GArray) pieces = demand_of ("stock.neck_strips=3", &result);
  const RwPiece *strip = find (pieces, RW_PIECE_NECK);

  g_assert_cmpint (strip->count, ==, 3);
  near (strip->width, result.value[RW_NECK_BLANK_DEPTH]);
  near (strip->thickness, result.value[RW_NECK_BLANK_WIDTH] / 3 + 1);
  g_assert_true (strip->on_edge);
}

/* What each choice adds or takes away. */
static void
test_kinds (void)
{
  RwResult result;
  g_autoptr (GArray) plain = demand_of ("", &result);
  g_autoptr (GArray) tunnel = demand_of ("fifth.route=tunnel|fretboard.binding=1.5|joint.kind=stick", &result);
  g_autoptr (GArray) staves = demand_of ("rim.construction=staves|rim.segments=16|frets.count=0", &result);
  g_autoptr (GArray) plies = demand_of ("rim.construction=plies|rim.tone_ring_rod=4|stock.board_strips=3", &result);

  g_assert_cmpint (count (plain, RW_PIECE_HOOK), ==, 18);
  g_assert_cmpint (count (plain, RW_PIECE_SHOE), ==, 18);
  g_assert_cmpint (count (plain, RW_PIECE_ROD), ==, 2);
  g_assert_cmpint (count (plain, RW_PIECE_FRET), ==, 19);
  g_assert_cmpint (count (plain, RW_PIECE_TUBE), ==, 0);
  g_assert_cmpint (count (tunnel, RW_PIECE_TUBE), ==, 1);
  g_assert_cmpint (count (tunnel, RW_PIECE_BINDING), ==, 2);
  g_assert_cmpint (count (tunnel, RW_PIECE_STICK), ==, 1);
  g_assert_cmpint (count (tunnel, RW_PIECE_ROD), ==, 0);
  g_assert_cmpint (count (staves, RW_PIECE_STAVE), ==, 16);
  g_assert_cmpint (count (staves, RW_PIECE_FRET), ==, 0);
  g_assert_cmpint (count (plies, RW_PIECE_PLY), ==, 6); /* 14 + 2 x 3 in plies of 3.5 */
  g_assert_cmpint (count (plies, RW_PIECE_TONE_RING), ==, 1);
  g_assert_cmpint (count (plies, RW_PIECE_FRETBOARD), ==, 3);
}

/* ---- the shelf ---- */

static void
put (RwShelf *shelf, RwStockKind kind, const char *material, double length, double width, double thickness)
{
  RwStockItem *item = rw_stock_item_new (kind);

  g_free (item->material);
  item->material = g_strdup (material);
  item->length = length;
  item->width = width;
  item->thickness = thickness;
  item->price = 10;
  g_ptr_array_add (shelf->items, item);
}

static RwShelf *
ample_shelf (double billet)
{
  RwShelf *shelf = rw_shelf_new ();

  put (shelf, RW_STOCK_BOARD, "beech", 1000, 60, 21);
  put (shelf, RW_STOCK_BOARD, "cherry_black", 1000, 90, 25);
  put (shelf, RW_STOCK_BOARD, "maple_hard", 900, 110, billet);
  put (shelf, RW_STOCK_BOARD, "pear", 700, 150, 8);
  put (shelf, RW_STOCK_ROD, "steel_mild", 2500, 4.17, 0);
  put (shelf, RW_STOCK_ROD, "steel_mild", 800, 6.35, 0);
  put (shelf, RW_STOCK_BAR, "brass_cartridge_annealed", 1000, 14, 4.8);
  put (shelf, RW_STOCK_BAR, "steel_mild", 400, 14, 12);
  put (shelf, RW_STOCK_WIRE, "brass_cartridge_half_hard", 1500, 2, 0);
  return shelf;
}

static void
test_enough (void)
{
  RwResult result;
  g_autoptr (RwShelf) shelf = ample_shelf (66);

  solve ("", &result);
  g_autoptr (RwCutting) cutting = rw_cutting_new (&result, shelf, FALSE, NULL, NULL);
  g_autoptr (GArray) shortages = rw_shortages (cutting);
  g_assert_cmpint (cutting->missing_total, ==, 0);
  g_assert_cmpuint (shortages->len, ==, 0);
  g_assert_true (cutting->whole);
  near (cutting->price, 90); /* everything is touched */
}

/* 28 mm of maple instead of 63: what is said, what is to be bought, and what helps. */
static void
test_short (void)
{
  RwResult result;
  g_autoptr (RwShelf) shelf = ample_shelf (28);

  solve ("", &result);
  g_autoptr (RwCutting) cutting = rw_cutting_new (&result, shelf, FALSE, NULL, NULL);
  g_autoptr (GArray) shortages = rw_shortages (cutting);
  g_assert_cmpuint (shortages->len, ==, 1);
  const RwShortage *lack = &g_array_index (shortages, RwShortage, 0);
  g_assert_cmpint (lack->reason, ==, RW_SHORT_THICKNESS);
  near (lack->there, 28);
  near (lack->needed, 63);
  g_autofree char *words = rw_shortage_words (cutting, lack, RW_STYLE_FILE);
  g_assert_nonnull (strstr (words, "35.0 mm too little"));
  g_autoptr (RwStockItem) buy = rw_shortage_buy (cutting, lack, &result.used);
  g_ptr_array_add (cutting->shelf->items, g_steal_pointer (&buy));
  g_autoptr (RwCutting) bought = rw_cutting_new (&result, cutting->shelf, FALSE, NULL, NULL);
  g_assert_cmpint (bought->missing_total, ==, 0); /* what is said to be missing is all that is */
}

/* Without any wire the frets are one line to read and one length to buy, which then does for all of them. */
static void
test_no_wire (void)
{
  RwResult result;
  g_autoptr (RwShelf) shelf = ample_shelf (66);

  solve ("", &result);
  g_ptr_array_set_size (shelf->items, (gint) shelf->items->len - 1);
  g_autoptr (RwCutting) cutting = rw_cutting_new (&result, shelf, FALSE, NULL, NULL);
  g_autoptr (GArray) shortages = rw_shortages (cutting);
  g_assert_cmpuint (shortages->len, ==, 1);
  const RwShortage *lack = &g_array_index (shortages, RwShortage, 0);
  g_assert_cmpint (lack->reason, ==, RW_SHORT_NONE_THERE);
  near (lack->count, result.used.frets_count); /* a piece for each fret */
  g_assert_cmpint (lack->count, ==, cutting->missing_total);
  g_autofree char *words = rw_shortage_words (cutting, lack, RW_STYLE_FILE);
  g_assert_true (g_str_has_prefix (words, "Fret 1 to Fret 19: 19 missing"));
  g_autoptr (RwStockItem) buy = rw_shortage_buy (cutting, lack, &result.used);
  g_assert_cmpint (buy->kind, ==, RW_STOCK_WIRE);
  g_ptr_array_add (cutting->shelf->items, g_steal_pointer (&buy));
  g_autoptr (RwCutting) bought = rw_cutting_new (&result, cutting->shelf, FALSE, NULL, NULL);
  g_assert_cmpint (bought->missing_total, ==, 0);
}

static void
test_remedies (void)
{
  RwResult result;
  RwDesign design;
  g_autoptr (RwShelf) shelf = ample_shelf (28);

  solve ("", &result);
  rw_design_init (&design);
  g_autoptr (RwCutting) cutting = rw_cutting_new (&result, shelf, FALSE, NULL, NULL);
  g_autoptr (GPtrArray) remedies = rw_stock_remedies (&design, NULL, shelf, cutting, NULL, NULL);
  g_assert_cmpuint (remedies->len, >, 0);
  for (guint i = 0; i < remedies->len; i++)
    {
      const RwStockRemedy *remedy = g_ptr_array_index (remedies, i);
      RwResult after;

      rw_solve (&remedy->design, NULL, &after);
      g_autoptr (RwCutting) again = rw_cutting_new (&after, shelf, FALSE, NULL, NULL);
      g_assert_cmpint (again->missing_total, <=, remedy->missing);
      g_assert_false (rw_design_equal (&remedy->design, &design));
    }
  g_assert_cmpint (((RwStockRemedy *) g_ptr_array_index (remedies, 0))->missing, ==, 0);
}

/* ---- each kind of remedy where it is the way out ---- */

typedef struct
{
  const char *name;
  int         at;    /* place on the ample shelf of what is there instead */
  double      length, width, thickness;
  int         count;
  RwParamId   param; /* a remedy that leaves nothing missing changes this */
  RwParamId   with;  /* and this; the same: no other */
} WayOut;

/* By hand, from the rough sizes of the built-in build: segments 26 wide and 20.6 thick, a neck 617 x 82 x 63, and a
 * fretboard 458 x 49 x 6; a neck without ears is 82 wide, its shaft 25 deep and its heel 63. */
static const WayOut ways_out[] = {
  { "segments", 0, 200, 32, 21, 6, RW_P_rim_segments, RW_P_rim_segments },
  { "turning", 0, 1000, 29.5, 21, 1, RW_P_rim_turning_allowance, RW_P_rim_turning_allowance },
  { "course-thickness", 0, 1000, 60, 17, 1, RW_P_rim_course_thickness, RW_P_rim_course_thickness },
  { "course-wood", 0, 1000, 60, 21, 0, RW_P_rim_course_wood, RW_P_rim_course_wood },
  { "neck-strips", 2, 900, 68, 28, 3, RW_P_stock_neck_strips, RW_P_headstock_ears },
  { "ears", 2, 900, 78, 66, 1, RW_P_headstock_ears, RW_P_headstock_ears },
  { "scarf", 2, 600, 110, 66, 1, RW_P_stock_neck_head, RW_P_headstock_ears },
  { "stacked-heel", 2, 900, 110, 28, 1, RW_P_stock_neck_heel, RW_P_stock_neck_head },
  { "planing", 3, 700, 150, 5.8, 1, RW_P_stock_planing, RW_P_stock_planing },
  { "over-length", 3, 473, 150, 8, 1, RW_P_stock_over_length, RW_P_stock_over_length },
  { "board-strips", 3, 700, 45, 8, 2, RW_P_stock_board_strips, RW_P_stock_board_strips },
  { "hoop-tail", 6, 920, 14, 4.8, 1, RW_P_stock_hoop_tail, RW_P_stock_hoop_tail },
};

static RwShelf *
shelf_of (const WayOut *row)
{
  RwShelf *shelf = ample_shelf (66);
  RwStockItem *item = g_ptr_array_index (shelf->items, row->at);

  item->length = row->length;
  item->width = row->width;
  item->thickness = row->thickness;
  item->count = row->count;
  put (shelf, RW_STOCK_BOARD, "pear", 200, 90, 8); /* for overlay and heel cap, whatever the fretboard comes from */
  return shelf;
}

static gboolean
is_changed (const RwStockRemedy *remedy, const RwDesign *design, RwParamId param)
{
  return !rw_design_same (&remedy->design, design, param);
}

/* Nothing is said to be changed that is not, and each change but once. */
static void
check_changes (const RwStockRemedy *remedy, const RwDesign *design)
{
  for (guint i = 0; i < remedy->changes->len; i++)
    {
      const RwRemedy *change = g_ptr_array_index (remedy->changes, i);

      g_assert_true (is_changed (remedy, design, change->param));
      for (guint k = 0; k < i; k++)
        g_assert_cmpint (((const RwRemedy *) g_ptr_array_index (remedy->changes, k))->param, !=, change->param);
    }
}

static void
test_way_out (gconstpointer data)
{
  const WayOut *row = data;
  g_autoptr (RwShelf) shelf = shelf_of (row);
  gboolean offered = FALSE;
  RwResult result;
  RwDesign design;

  solve ("", &result);
  rw_design_init (&design);
  g_autoptr (RwCutting) cutting = rw_cutting_new (&result, shelf, FALSE, NULL, NULL);
  g_assert_cmpint (cutting->missing_total, >, 0);
  g_autoptr (GPtrArray) remedies = rw_stock_remedies (&design, NULL, shelf, cutting, NULL, NULL);
  for (guint i = 0; i < remedies->len; i++)
    {
      const RwStockRemedy *remedy = g_ptr_array_index (remedies, i);
      RwResult after;

      check_changes (remedy, &design);
      if (remedy->missing > 0)
        continue;
      rw_solve (&remedy->design, NULL, &after);
      g_autoptr (RwCutting) again = rw_cutting_new (&after, shelf, FALSE, NULL, NULL);
      g_assert_cmpint (again->missing_total, ==, 0);
      offered = offered || (is_changed (remedy, &design, row->param) && is_changed (remedy, &design, row->with));
    }
  g_assert_true (offered);
}

/* No remedy is another one with something besides. */
static void
test_no_more_than_needed (void)
{
  RwResult result;
  RwDesign design;
  g_autoptr (RwShelf) shelf = ample_shelf (28);

  ((RwStockItem *) g_ptr_array_index (shelf->items, 0))->count = 0;
  solve ("", &result);
  rw_design_init (&design);
  g_autoptr (RwCutting) cutting = rw_cutting_new (&result, shelf, FALSE, NULL, NULL);
  g_autoptr (GPtrArray) remedies = rw_stock_remedies (&design, NULL, shelf, cutting, NULL, NULL);
  g_assert_cmpint (((RwStockRemedy *) g_ptr_array_index (remedies, 0))->missing, ==, 0);
  for (guint i = 0; i < remedies->len; i++)
    for (guint k = 0; k < remedies->len; k++)
      {
        const RwStockRemedy *less = g_ptr_array_index (remedies, i), *more = g_ptr_array_index (remedies, k);
        gboolean all = less->missing == 0 && more->missing == 0 && less->changes->len < more->changes->len;

        for (guint c = 0; c < less->changes->len && all; c++)
          all = rw_design_same (&less->design, &more->design,
                                ((const RwRemedy *) g_ptr_array_index (less->changes, c))->param);
        g_assert_false (all);
      }
}

/* What is measured or made, no remedy changes. */
static void
test_facts (void)
{
  RwResult result;
  RwDesign design;
  RwMeasured measured;
  g_autoptr (RwShelf) shelf = ample_shelf (66);

  /* Beech too thin for its course, which is glued and measured. */
  ((RwStockItem *) g_ptr_array_index (shelf->items, 0))->thickness = 19;
  rw_design_init (&design);
  rw_measured_init (&measured);
  rw_measured_set (&measured, "rim.course_thickness[1]", 20, NULL);
  rw_solve (&design, &measured, &result);
  g_autoptr (RwCutting) cutting = rw_cutting_new (&result, shelf, FALSE, NULL, NULL);
  g_assert_cmpint (cutting->missing_total, ==, 10);
  g_autoptr (GPtrArray) remedies = rw_stock_remedies (&design, &measured, shelf, cutting, NULL, NULL);
  for (guint i = 0; i < remedies->len; i++)
    g_assert_true (rw_design_same (&((RwStockRemedy *) g_ptr_array_index (remedies, i))->design, &design,
                                   RW_P_rim_course_thickness));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/stock/demand/segments", test_segments);
  g_test_add_func ("/stock/demand/neck-solid", test_neck_solid);
  g_test_add_func ("/stock/demand/neck-built", test_neck_built);
  g_test_add_func ("/stock/demand/neck-strips", test_neck_strips);
  g_test_add_func ("/stock/demand/kinds", test_kinds);
  g_test_add_func ("/stock/enough", test_enough);
  g_test_add_func ("/stock/short", test_short);
  g_test_add_func ("/stock/no-wire", test_no_wire);
  g_test_add_func ("/stock/remedies", test_remedies);
  g_test_add_func ("/stock/no-more-than-needed", test_no_more_than_needed);
  for (gsize i = 0; i < G_N_ELEMENTS (ways_out); i++)
    {
      g_autofree char *path = g_strdup_printf ("/stock/way-out/%s", ways_out[i].name);

      g_test_add_data_func (path, &ways_out[i], test_way_out);
    }
  g_test_add_func ("/stock/facts", test_facts);
  return g_test_run ();
}
