/* Cutting boards: plans checked again from the task alone, and some that are known from the hand. */
#include <math.h>

#include "stock/cut_board.h"

#define CLOSE 1e-6

/* ---- plans checked from the task alone ---- */

static gboolean
is_good_wood (const RwBoardTask *task, const RwBoardStock *stock, double from, double to)
{
  if (from < task->end_trim - CLOSE || to > stock->length - task->end_trim + CLOSE)
    return FALSE;
  for (guint i = 0; stock->avoid != NULL && i < stock->avoid->len; i++)
    {
      const RwStretch *bad = &g_array_index (stock->avoid, RwStretch, i);

      if (from < bad->to - CLOSE && to > bad->from + CLOSE)
        return FALSE;
    }
  return TRUE;
}

static void
check_cut (const RwBoardTask *task, const RwBoardStock *stock, const RwBoardStrip *strip, const RwBoardCut *cut)
{
  const RwBoardPiece *piece = &task->pieces[cut->piece];
  double across = cut->on_edge ? piece->thickness : piece->width, deep = cut->on_edge ? piece->width : piece->thickness;

  g_assert_true (piece->on_edge || !cut->on_edge);
  g_assert_cmpfloat (fabs (cut->width - across), <, CLOSE);
  g_assert_cmpfloat (cut->to - cut->from, >=, piece->length - CLOSE); /* along the board: the grain is kept */
  g_assert_cmpfloat (strip->to - strip->from, >=, across - CLOSE);
  g_assert_cmpfloat (stock->thickness, >=, deep - CLOSE);
  g_assert_true (is_good_wood (task, stock, cut->from, cut->to));
  if (piece->run > 0) /* mitred ends: half of the row's ends on either side */
    g_assert_cmpfloat (strip->to - strip->from, <=, across + 0.05 + CLOSE);
}

/* Along a strip: a kerf between neighbours, no overlap, and room for the ends of a row. */
static void
check_strip (const RwBoardTask *task, const RwBoardStock *stock, const RwBoardStrip *strip, int *made)
{
  for (guint i = 0; i < strip->cuts->len; i++)
    {
      const RwBoardCut *cut = &g_array_index (strip->cuts, RwBoardCut, i);

      check_cut (task, stock, strip, cut);
      made[cut->piece]++;
      for (guint k = 0; k < i; k++)
        {
          const RwBoardCut *other = &g_array_index (strip->cuts, RwBoardCut, k);
          double apart = MAX (cut->from - other->to, other->from - cut->to);

          g_assert_cmpfloat (apart, >=, task->cross_kerf - CLOSE);
        }
    }
}

static void
check_board (const RwBoardTask *task, const RwBoardPlanBoard *board, int *made)
{
  const RwBoardStock *stock = &task->stock[board->stock];
  double edge = task->edge_trim;

  g_assert_cmpint (board->copy, <, stock->count);
  for (guint s = 0; s < board->strips->len; s++)
    {
      const RwBoardStrip *strip = g_ptr_array_index (board->strips, s);

      g_assert_cmpfloat (strip->from, >=, edge - CLOSE);
      g_assert_cmpfloat (strip->to, <=, stock->width - task->edge_trim + CLOSE);
      edge = strip->to + task->rip_kerf;
      check_strip (task, stock, strip, made);
    }
  for (guint i = 0; i < board->offcuts->len; i++)
    {
      const RwOffcut *offcut = &g_array_index (board->offcuts, RwOffcut, i);

      g_assert_true (is_good_wood (task, stock, offcut->x0, offcut->x1));
      g_assert_cmpfloat (offcut->x1 - offcut->x0, >=, task->least_offcut - CLOSE);
      for (guint s = 0; s < board->strips->len; s++)
        {
          const RwBoardStrip *strip = g_ptr_array_index (board->strips, s);

          for (guint c = 0; c < strip->cuts->len; c++)
            {
              const RwBoardCut *cut = &g_array_index (strip->cuts, RwBoardCut, c);

              g_assert_true (cut->to <= offcut->x0 + CLOSE || cut->from >= offcut->x1 - CLOSE
                             || strip->to <= offcut->y0 + CLOSE || strip->from >= offcut->y1 - CLOSE);
            }
        }
    }
}

static void
check_plan (const RwBoardTask *task, const RwBoardPlan *plan)
{
  g_autofree int *made = g_new0 (int, task->piece_count + 1);
  int missing = 0;

  for (guint b = 0; b < plan->boards->len; b++)
    {
      const RwBoardPlanBoard *board = g_ptr_array_index (plan->boards, b);

      check_board (task, board, made);
      for (guint k = 0; k < b; k++)
        {
          const RwBoardPlanBoard *other = g_ptr_array_index (plan->boards, k);

          g_assert_true (other->stock != board->stock || other->copy != board->copy);
        }
    }
  for (int i = 0; i < task->piece_count; i++)
    {
      g_assert_cmpint (made[i] + plan->left_out[i], ==, task->pieces[i].count);
      missing += plan->left_out[i];
    }
  g_assert_cmpint (missing, ==, plan->missing);
  if (missing == 0)
    g_assert_cmpint (plan->bound, <=, (int) plan->boards->len);
  if (plan->bound < 0)
    g_assert_cmpint (missing, >, 0);
}

/* ---- from the hand ---- */

static RwBoardTask
task_of (const RwBoardPiece *pieces, int piece_count, const RwBoardStock *stock, int stock_count)
{
  return (RwBoardTask){ .pieces = pieces, .piece_count = piece_count, .stock = stock, .stock_count = stock_count,
                        .rip_kerf = 3, .cross_kerf = 3, .least_offcut = 50 };
}

/* Two strips of 48.5 and their kerf are just 100 wide; two lengths of 98.5 and their kerf just 200 long. */
static void
test_to_the_kerf (void)
{
  RwBoardPiece piece = { 98.5, 48.5, 20, 4, FALSE, 0 };
  RwBoardStock stock = { 200, 100, 20, 2, NULL };
  RwBoardTask task = task_of (&piece, 1, &stock, 1);
  g_autoptr (RwBoardPlan) plan = rw_cut_board (&task);

  check_plan (&task, plan);
  g_assert_cmpint (plan->missing, ==, 0);
  g_assert_cmpuint (plan->boards->len, ==, 1);
  g_assert_cmpint (plan->bound, ==, 1);

  /* A tenth more and neither fits twice: one piece from each board. */
  piece.length = 98.6;
  piece.width = 48.6;
  g_autoptr (RwBoardPlan) less = rw_cut_board (&task);
  check_plan (&task, less);
  g_assert_cmpint (less->missing, ==, 2);
}

/* The grain: a piece 300 long never comes from a board 200 long, however wide. */
static void
test_grain (void)
{
  RwBoardPiece piece = { 300, 50, 20, 1, FALSE, 0 };
  RwBoardStock stock = { 200, 400, 20, 1, NULL };
  RwBoardTask task = task_of (&piece, 1, &stock, 1);
  g_autoptr (RwBoardPlan) plan = rw_cut_board (&task);

  check_plan (&task, plan);
  g_assert_cmpint (plan->missing, ==, 1);
  g_assert_cmpint (plan->bound, ==, -1);
}

/* A knot in the middle of 1000 leaves 480 on either side: no 500 but two of 450. */
static void
test_knot (void)
{
  RwStretch knot = { 480, 520 };
  g_autoptr (GArray) avoid = g_array_append_val (g_array_new (FALSE, FALSE, sizeof (RwStretch)), knot);
  RwBoardPiece pieces[] = { { 450, 80, 20, 2, FALSE, 0 }, { 500, 10, 20, 1, FALSE, 0 } };
  RwBoardStock stock = { 1000, 100, 25, 1, avoid };
  RwBoardTask task = task_of (pieces, 2, &stock, 1);
  g_autoptr (RwBoardPlan) plan = rw_cut_board (&task);

  check_plan (&task, plan);
  g_assert_cmpint (plan->left_out[0], ==, 0);
  g_assert_cmpint (plan->left_out[1], ==, 1);
}

/* On edge: 60 by 4 comes off a board 60 thick, never off one 20 thick and 50 wide. */
static void
test_on_edge (void)
{
  RwBoardPiece piece = { 900, 60, 4, 3, TRUE, 0 };
  RwBoardStock stock[] = { { 1000, 50, 20, 1, NULL }, { 1000, 18, 60, 1, NULL } };
  RwBoardTask task = task_of (&piece, 1, stock, 2);
  g_autoptr (RwBoardPlan) plan = rw_cut_board (&task);

  check_plan (&task, plan);
  g_assert_cmpint (plan->missing, ==, 0); /* 3 x 4 and two kerfs of 3: just 18 */
  g_assert_cmpint (((RwBoardPlanBoard *) g_ptr_array_index (plan->boards, 0))->stock, ==, 1);
}

/* Twelve segments of a ring of 280 and 240 with a kerf of 3 need a strip of 869.684 x 24.089: W by the same source as
 * for the model's segments (American Association of Woodturners, Segmenting 101, 2014), the strip by placing the
 * trapezoids one by one. */
static void
test_segments (void)
{
  double mitre = 15 * G_PI / 180, kerf = 3 / cos (mitre), width = 24.0889, mean = (75.0258 + 62.1166) / 2;
  RwBoardPiece piece = { mean + kerf - 3, width, 20, 12, FALSE, kerf + width * tan (mitre) };
  RwBoardStock stock = { 869.70, 24.1, 20, 1, NULL };
  RwBoardTask task = task_of (&piece, 1, &stock, 1);
  g_autoptr (RwBoardPlan) plan = rw_cut_board (&task), short_plan = NULL;

  check_plan (&task, plan);
  g_assert_cmpint (plan->missing, ==, 0);
  stock.length = 869.60;
  short_plan = rw_cut_board (&task);
  check_plan (&task, short_plan);
  g_assert_cmpint (short_plan->missing, ==, 1);
}

/* One wide board holds what two narrow ones do as well: the wide one is taken. */
static void
test_fewest (void)
{
  RwBoardPiece piece = { 400, 45, 20, 4, FALSE, 0 };
  RwBoardStock stock[] = { { 420, 100, 20, 2, NULL }, { 420, 195, 22, 1, NULL } };
  RwBoardTask task = task_of (&piece, 1, stock, 2);
  g_autoptr (RwBoardPlan) plan = rw_cut_board (&task);

  check_plan (&task, plan);
  g_assert_cmpint (plan->missing, ==, 0);
  g_assert_cmpuint (plan->boards->len, ==, 1);
}

/* ---- random ones ---- */

static void
random_task (RwBoardTask *task, RwBoardPiece *pieces, RwBoardStock *stock)
{
  task->piece_count = g_test_rand_int_range (1, 7);
  task->stock_count = g_test_rand_int_range (1, 5);
  task->rip_kerf = g_test_rand_int_range (0, 4);
  task->cross_kerf = g_test_rand_int_range (0, 4);
  task->end_trim = g_test_rand_int_range (0, 12);
  task->edge_trim = g_test_rand_int_range (0, 4);
  task->least_offcut = 60;
  task->quick = g_test_rand_bit ();
  for (int i = 0; i < task->piece_count; i++)
    pieces[i] = (RwBoardPiece){ g_test_rand_double_range (20, 600), g_test_rand_double_range (4, 90),
                                g_test_rand_double_range (3, 40), g_test_rand_int_range (1, 14), g_test_rand_bit (),
                                g_test_rand_bit () ? g_test_rand_double_range (1, 12) : 0 };
  for (int k = 0; k < task->stock_count; k++)
    {
      GArray *avoid = g_array_new (FALSE, FALSE, sizeof (RwStretch));

      for (int n = g_test_rand_int_range (0, 3); n > 0; n--)
        {
          double from = g_test_rand_double_range (0, 900);
          RwStretch bad = { from, from + g_test_rand_double_range (5, 200) };

          g_array_append_val (avoid, bad);
        }
      stock[k] = (RwBoardStock){ g_test_rand_double_range (100, 1200), g_test_rand_double_range (20, 250),
                                 g_test_rand_double_range (5, 60), g_test_rand_int_range (0, 3), avoid };
    }
}

static void
test_random (void)
{
  for (int turn = 0; turn < 120; turn++)
    {
      RwBoardPiece pieces[8];
      RwBoardStock stock[8];
      RwBoardTask task = { .pieces = pieces, .stock = stock };

      random_task (&task, pieces, stock);
      g_autoptr (RwBoardPlan) plan = rw_cut_board (&task);
      check_plan (&task, plan);
      for (int k = 0; k < task.stock_count; k++)
        g_array_unref ((GArray *) stock[k].avoid);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/cut-board/to-the-kerf", test_to_the_kerf);
  g_test_add_func ("/cut-board/grain", test_grain);
  g_test_add_func ("/cut-board/knot", test_knot);
  g_test_add_func ("/cut-board/on-edge", test_on_edge);
  g_test_add_func ("/cut-board/segments", test_segments);
  g_test_add_func ("/cut-board/fewest", test_fewest);
  g_test_add_func ("/cut-board/random", test_random);
  return g_test_run ();
}
