/* Cutting lengths from bars: optima known from outside, and random cases against trying everything. */
#include <math.h>
#include <string.h>

#include "stock/cut_line.h"

/* ---- plans checked from the task alone ---- */

static void
check_bar (const RwLineTask *task, const RwLineBar *bar)
{
  const RwLineStock *stock = &task->stock[bar->stock];
  double end = task->trim;

  /* Cut one after the other from the trimmed end. */
  for (int i = 0; i < task->piece_count; i++)
    for (int n = 0; n < bar->pieces[i]; n++)
      end += task->pieces[i].length + task->kerf;
  double last = end - task->kerf; /* the last cut may fall off */
  g_assert_cmpfloat (last, <=, stock->length - task->trim + 1e-6);
  g_assert_cmpfloat (fabs (bar->rest - MAX (0, stock->length - task->trim - end)), <, 2e-3);
  g_assert_cmpint (bar->times, >, 0);
}

/* Demand met but for what is said to be left out, no more stock than there is, cost as said, bound not above it. */
static void
check_plan (const RwLineTask *task, const RwLinePlan *plan)
{
  g_autofree int *made = g_new0 (int, task->piece_count), *used = g_new0 (int, task->stock_count);
  double cost = 0, longest = 0;
  int missing = 0;

  for (guint b = 0; b < plan->bars->len; b++)
    {
      const RwLineBar *bar = &g_array_index (plan->bars, RwLineBar, b);

      check_bar (task, bar);
      used[bar->stock] += bar->times;
      cost += bar->times * (task->goal == RW_LINE_FEWEST ? 1 : task->stock[bar->stock].length);
      longest = MAX (longest, bar->rest);
      for (int i = 0; i < task->piece_count; i++)
        made[i] += bar->times * bar->pieces[i];
    }
  for (int i = 0; i < task->piece_count; i++)
    {
      g_assert_cmpint (made[i] + plan->left_out[i], ==, task->pieces[i].count);
      missing += plan->left_out[i];
    }
  for (int k = 0; k < task->stock_count; k++)
    if (task->stock[k].count != RW_LINE_NO_LIMIT)
      g_assert_cmpint (used[k], <=, task->stock[k].count);
  g_assert_cmpint (missing, ==, plan->missing);
  g_assert_cmpfloat (fabs (cost - plan->cost), <, 1e-6);
  g_assert_false (plan->bound > plan->cost + 1e-9);
  g_assert_cmpfloat (fabs (longest - plan->offcut), <, 1e-9);
  if (isfinite (plan->offcut_bound))
    g_assert_cmpfloat (plan->offcut_bound, >=, plan->offcut - 1e-9);
}

/* ---- optima known from outside ---- */

#define PIECES_MAX 14

typedef struct
{
  const char *name;
  RwLineGoal  goal;
  double      kerf;
  RwLineStock stock[4];
  RwLinePiece pieces[PIECES_MAX];
  double      cost;
} Known;

static const Known known[] = {
  /* 1001.5/125.5: at most seven from each rod, so ceil(24/7). */
  { "hooks", RW_LINE_FEWEST, 1.5, { { 1000, 20 } }, { { 124, 24 } }, 4 },
  /* Without kerf eight go into a rod. */
  { "hooks-no-kerf", RW_LINE_FEWEST, 0, { { 1000, 20 } }, { { 124, 24 } }, 3 },
  /* No two fit: 2 x 260 + 3 > 500, while the volume alone would be three bars. */
  { "no-two-fit", RW_LINE_FEWEST, 3, { { 500, 20 } }, { { 260, 5 } }, 5 },
  /* {210,150,110} {210,150,100} {210,135,135}, where taking the longest first needs four; three by volume. */
  { "greedy-trap", RW_LINE_FEWEST, 3, { { 500, 20 } },
    { { 210, 3 }, { 150, 2 }, { 135, 2 }, { 110, 1 }, { 100, 1 } }, 3 },
  /* All stock is a multiple of 610, and 8 x 610 is less than the pieces with their kerf but for the last. */
  { "mixed-stock", RW_LINE_LENGTH, 3, { { 1220, 20 }, { 1830, 20 }, { 2440, 20 } },
    { { 720, 3 }, { 610, 2 }, { 430, 3 }, { 265, 2 } }, 5490 },
  /* {118,118,64} from 330, the rest from 1000; 1303.5 are needed and no less stock is longer. */
  { "off-cuts", RW_LINE_LENGTH, 1.5, { { 1000, RW_LINE_NO_LIMIT }, { 450, 1 }, { 330, 1 } },
    { { 118, 6 }, { 96, 4 }, { 64, 3 } }, 1330 },
  { "off-cuts-without", RW_LINE_FEWEST, 1.5, { { 1000, RW_LINE_NO_LIMIT } }, { { 118, 6 }, { 96, 4 }, { 64, 3 } }, 2 },
  /* 3360 in all with kerf, 903 a board: 3.72. */
  { "rim-kit", RW_LINE_FEWEST, 3, { { 900, 20 } }, { { 76, 24 }, { 64, 12 }, { 52, 12 } }, 4 },
  /* V. Chvatal, Linear Programming (1983), p. 195: relaxation 452.25. */
  { "chvatal", RW_LINE_FEWEST, 0, { { 100, RW_LINE_NO_LIMIT } }, { { 45, 97 }, { 36, 610 }, { 31, 395 }, { 14, 211 } },
    453 },
  /* The cutting-stock problem as encyclopaedias give it: 407 160 mm of rolls from 5600 mm, 73 at least and at best. */
  { "rolls", RW_LINE_FEWEST, 0, { { 5600, RW_LINE_NO_LIMIT } },
    { { 1380, 22 }, { 1520, 25 }, { 1560, 12 }, { 1710, 14 }, { 1820, 18 }, { 1880, 18 }, { 1930, 20 }, { 2000, 10 },
      { 2050, 12 }, { 2100, 14 }, { 2140, 16 }, { 2150, 18 }, { 2200, 20 } }, 73 },
};

static RwLineTask
task_of (const Known *row)
{
  RwLineTask task = { .pieces = row->pieces, .stock = row->stock, .kerf = row->kerf, .goal = row->goal };

  while (task.piece_count < PIECES_MAX && row->pieces[task.piece_count].count > 0)
    task.piece_count++;
  while (task.stock_count < 4 && row->stock[task.stock_count].length > 0)
    task.stock_count++;
  return task;
}

static void
test_known (gconstpointer data)
{
  const Known *row = data;
  RwLineTask task = task_of (row);
  g_autoptr (RwLinePlan) plan = rw_cut_line (&task);

  check_plan (&task, plan);
  g_assert_cmpint (plan->missing, ==, 0);
  g_assert_cmpfloat (plan->cost, ==, row->cost);
  g_assert_true (plan->proved);
}

/* The rolls leave 0.401 % waste, by the same source. */
static void
test_rolls_waste (void)
{
  const Known *row = &known[G_N_ELEMENTS (known) - 1];
  RwLineTask task = task_of (row);
  g_autoptr (RwLinePlan) plan = rw_cut_line (&task);

  g_assert_cmpfloat (fabs (1 - 407160 / (plan->cost * 5600) - 0.00401), <, 5e-6);
}

/* ---- random cases against trying everything ---- */

#define SMALL_PIECES 8
#define SMALL_STOCK 4

typedef struct
{
  double length[SMALL_PIECES], room[SMALL_STOCK], stock[SMALL_STOCK];
  gboolean touched[SMALL_STOCK];
  int    pieces, bars;
  double kerf, trim;
  RwLineGoal goal;
  int    least_missing;
  double least_cost, longest;
} Everything;

static void
judge (Everything *all, int missing)
{
  double cost = 0, longest = 0;

  for (int b = 0; b < all->bars; b++)
    if (all->touched[b])
      {
        cost += all->goal == RW_LINE_FEWEST ? 1 : all->stock[b];
        longest = MAX (longest, all->room[b] - all->kerf);
      }
  if (missing < all->least_missing || (missing == all->least_missing && cost < all->least_cost - 1e-9)
      || (missing == all->least_missing && cost < all->least_cost + 1e-9 && longest > all->longest))
    {
      all->least_missing = missing;
      all->least_cost = cost;
      all->longest = longest;
    }
}

/* Every piece into every bar that has room for it, or nowhere. */
static void
place (Everything *all, int piece, int missing)
{
  if (missing > all->least_missing)
    return;
  if (piece == all->pieces)
    {
      judge (all, missing);
      return;
    }
  for (int b = 0; b < all->bars; b++)
    {
      double need = all->length[piece] + all->kerf;
      gboolean was = all->touched[b];

      if (need > all->room[b] + 1e-9)
        continue;
      all->room[b] -= need;
      all->touched[b] = TRUE;
      place (all, piece + 1, missing);
      all->touched[b] = was;
      all->room[b] += need;
    }
  place (all, piece + 1, missing + 1);
}

static void
test_everything (void)
{
  for (int turn = 0; turn < 150; turn++)
    {
      RwLinePiece pieces[SMALL_PIECES];
      RwLineStock stock[SMALL_STOCK];
      Everything all = { .pieces = g_test_rand_int_range (1, SMALL_PIECES),
                         .bars = g_test_rand_int_range (1, SMALL_STOCK),
                         .kerf = g_test_rand_int_range (0, 5),
                         .trim = g_test_rand_int_range (0, 3),
                         .goal = g_test_rand_bit () ? RW_LINE_FEWEST : RW_LINE_LENGTH,
                         .least_missing = SMALL_PIECES + 1 };
      RwLineTask task = { pieces, all.pieces, stock, all.bars, all.kerf, all.trim, all.goal, FALSE, NULL, NULL };

      for (int i = 0; i < all.pieces; i++)
        pieces[i] = (RwLinePiece){ all.length[i] = g_test_rand_int_range (30, 300), 1 };
      for (int b = 0; b < all.bars; b++)
        {
          stock[b] = (RwLineStock){ all.stock[b] = g_test_rand_int_range (150, 700), 1 };
          all.room[b] = all.stock[b] - 2 * all.trim + all.kerf;
        }
      place (&all, 0, 0);

      g_autoptr (RwLinePlan) plan = rw_cut_line (&task);
      check_plan (&task, plan);
      g_assert_cmpint (plan->missing, ==, all.least_missing);
      g_assert_true (plan->proved);
      g_assert_cmpfloat (plan->cost, ==, all.least_cost);
      if (plan->missing == 0)
        {
          g_assert_true (plan->offcut_proved);
          g_assert_cmpfloat (plan->offcut, >, all.longest - 0.51);
          g_assert_cmpfloat (plan->offcut, <, MAX (0, all.longest) + 1e-6);
        }
    }
}

/* Sixty pieces of sixty lengths: no plan touches fewer bars, proved.  Of the off-cut it is at least said how much
 * longer it could be. */
static void
test_sixty (void)
{
  double slowest = 0;

  for (int turn = 0; turn < 3; turn++)
    {
      RwLinePiece pieces[60];
      RwLineStock stock[2] = { { 1000, RW_LINE_NO_LIMIT }, { 600, 8 } };
      RwLineTask task = { pieces, 60, stock, turn % 2 + 1, turn % 4, 0, RW_LINE_FEWEST, FALSE, NULL, NULL };

      for (int i = 0; i < 60; i++)
        pieces[i] = (RwLinePiece){ g_test_rand_int_range (40, turn % 3 == 0 ? 250 : 600), 1 };
      gint64 start = g_get_monotonic_time ();
      g_autoptr (RwLinePlan) plan = rw_cut_line (&task);
      slowest = MAX (slowest, (double) (g_get_monotonic_time () - start) / 1e6);
      check_plan (&task, plan);
      g_assert_cmpint (plan->missing, ==, 0);
      g_assert_true (plan->proved);
      g_assert_cmpfloat (plan->bound, ==, plan->cost);
      g_assert_cmpfloat (plan->offcut_bound, >=, plan->offcut - 1e-9);
      g_assert_cmpfloat (plan->offcut_bound, <=, 1000);
    }
  g_test_message ("slowest %.3f s", slowest);
}

static gboolean
stop_at_once (gpointer data)
{
  ++*(int *) data;
  return FALSE;
}

/* Given up, there is still a plan, and it does not claim to be the best. */
static void
test_cancel (void)
{
  RwLinePiece pieces[60];
  RwLineStock stock[] = { { 1000, RW_LINE_NO_LIMIT }, { 730, 9 } };
  int asked = 0;
  RwLineTask task = { pieces, 60, stock, 2, 2, 0, RW_LINE_LENGTH, FALSE, stop_at_once, &asked };

  for (int i = 0; i < 60; i++)
    pieces[i] = (RwLinePiece){ 101.37 + i * 7.31, 1 };
  g_autoptr (RwLinePlan) plan = rw_cut_line (&task);
  check_plan (&task, plan);
  g_assert_cmpint (asked, ==, 1);
  g_assert_false (plan->proved && plan->offcut_proved);
}

static void
test_nothing (void)
{
  RwLinePiece pieces[] = { { 0, 3 }, { 100, 0 }, { 100, 2 } };
  RwLineStock stock[] = { { 50, 4 }, { 0, 1 } };
  RwLineTask none = { .pieces = pieces, .piece_count = 2, .stock = stock, .stock_count = 2, .kerf = 1 };
  RwLineTask hopeless = { .pieces = pieces + 2, .piece_count = 1, .stock = stock, .stock_count = 2, .kerf = 1 };
  g_autoptr (RwLinePlan) empty = rw_cut_line (&none), short_plan = rw_cut_line (&hopeless);

  g_assert_cmpint ((int) empty->bars->len, ==, 0);
  g_assert_cmpint (empty->missing, ==, 0);
  g_assert_cmpint (short_plan->missing, ==, 2);
  g_assert_cmpint (short_plan->left_out[0], ==, 2);
  g_assert_true (short_plan->proved);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (known); i++)
    {
      g_autofree char *path = g_strdup_printf ("/cut-line/known/%s", known[i].name);

      g_test_add_data_func (path, &known[i], test_known);
    }
  g_test_add_func ("/cut-line/known/rolls-waste", test_rolls_waste);
  g_test_add_func ("/cut-line/everything", test_everything);
  g_test_add_func ("/cut-line/sixty", test_sixty);
  g_test_add_func ("/cut-line/cancel", test_cancel);
  g_test_add_func ("/cut-line/nothing", test_nothing);
  return g_test_run ();
}
