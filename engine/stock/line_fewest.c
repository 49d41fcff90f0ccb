/* The fewest pieces left out, then the fewest bars, then the longest off-cut: each by asking whether pieces fit into
 * bars.
 *
 * Why it is enough to ask that: what is left out of a plan can be changed for any larger piece that is cut, so it may
 * as well be the largest pieces; and a bar can be changed for a longer one that is not touched, so the longest bars may
 * as well be the ones, which leaves no shorter an off-cut either.  An off-cut that is to be left is one piece more. */
#include "line_problem.h"

#include <math.h>
#include <string.h>

typedef enum { FITS, FITS_NOT, FITS_UNKNOWN } Fits;

/* Steps of the searches, one after the other; the long one only where it matters most whether all fit. */
#define STEPS_QUICK 20000u
#define STEPS_THOROUGH 60000u
#define STEPS_LONG 600000u
/* For all questions about the off-cut together: some tenths of a second.  Each takes a share of what is left. */
#define STEPS_OFFCUTS 60000u
#define SHARES 3

/* How finely the longest off-cut is looked for. */
#define OFFCUT_STEP ((gint64) 500)

typedef struct
{
  RwLineWork *work;
  guint       thorough, more; /* steps */
  gboolean    only_bound;     /* no search */
  gint64      purse;          /* no plan may cost more */
  guint       taken;          /* by the last search */
} Effort;

/* ---- does it fit ---- */

static gint64
room_of (const RwLine *line)
{
  gint64 room = 0;

  for (int k = 0; k < line->s; k++)
    room += line->limit[k] * line->capacity[k];
  return room;
}

static gint64
size_of (const RwLine *line)
{
  gint64 size = 0;

  for (int i = 0; i < line->m; i++)
    size += line->demand[i] * line->size[i];
  return size;
}

static int
bars_of (const RwLine *line)
{
  int bars = 0;

  for (int k = 0; k < line->s; k++)
    bars += line->limit[k];
  return bars;
}

static RwLineSolution *
search (Effort *effort, const RwLine *line, const RwLinePrices *prices, guint steps, gboolean thorough,
        gboolean *exhausted)
{
  RwLineWork inner = { line, prices, effort->work->go_on, effort->work->data, effort->work->cancelled };
  RwLineSolution *found
      = rw_line_search (&inner, NULL, effort->purse + line->unit, steps, thorough, &effort->taken, exhausted);

  effort->work->cancelled = inner.cancelled;
  return found;
}

/* Whether all pieces of line fit into its bars, for no more than the purse; plan is set where they do. */
static Fits
fits (Effort *effort, const RwLine *line, RwLineSolution **plan)
{
  g_autoptr (RwLineSolution) quick = NULL;
  g_autoptr (RwLinePrices) prices = NULL, best = NULL;
  gboolean exhausted = FALSE;

  *plan = NULL;
  if (size_of (line) > room_of (line))
    return FITS_NOT;
  quick = rw_line_greedy (line, NULL);
  if (quick->missing == 0 && quick->cost <= effort->purse)
    {
      *plan = g_steal_pointer (&quick);
      return FITS;
    }
  prices = rw_line_prices_new (line, (double) effort->purse, NULL);
  if (prices->bound > (double) effort->purse + 1e-6 * (double) line->unit)
    return FITS_NOT;
  if (effort->only_bound)
    return FITS_UNKNOWN;
  *plan = search (effort, line, prices, STEPS_QUICK, FALSE, &exhausted);
  if (*plan == NULL && !exhausted)
    *plan = search (effort, line, prices, effort->thorough, TRUE, &exhausted);
  if (*plan == NULL && !exhausted && effort->more > 0)
    {
      best = rw_line_prices_new (line, NAN, prices->first);
      *plan = search (effort, line, best, effort->more, FALSE, &exhausted);
    }
  return *plan != NULL ? FITS : exhausted ? FITS_NOT : FITS_UNKNOWN;
}

/* ---- pieces and bars ---- */

/* The parts of line that a question is about; demand and limit are its own. */
static RwLine
part_of (const RwLine *line)
{
  RwLine part = *line;

  part.demand = g_memdup2 (line->demand, (gsize) (line->m + 1) * sizeof (int));
  part.limit = g_memdup2 (line->limit, (gsize) (line->s + 1) * sizeof (int));
  return part;
}

static void
part_clear (RwLine *part)
{
  g_free (part->demand);
  g_free (part->limit);
}

static void
leave_out_largest (RwLine *part, const RwLine *line, int count)
{
  for (int i = 0; i < line->m; i++)
    {
      int out = MIN (count, line->demand[i]);

      part->demand[i] = line->demand[i] - out;
      count -= out;
    }
}

static void
keep_longest (RwLine *part, const RwLine *line, int count)
{
  for (int k = 0; k < line->s; k++)
    {
      part->limit[k] = MIN (count, line->limit[k]);
      count -= part->limit[k];
    }
}

/* The least number for which the question is not answered no, and the plan; known: none less will do. */
static int
least (Effort *effort, RwLine *part, const RwLine *line, void (*set) (RwLine *, const RwLine *, int), int from, int to,
       RwLineSolution **plan, int *known)
{
  *known = from;
  *plan = NULL;
  for (int n = from; n < to && !effort->work->cancelled; n++)
    {
      Fits answer;

      set (part, line, n);
      effort->purse = bars_of (part);
      answer = fits (effort, part, plan);
      if (answer == FITS)
        return n;
      if (answer == FITS_NOT && *known == n)
        *known = n + 1;
    }
  set (part, line, to);
  return to;
}

static int
longer_than_any_bar (const RwLine *line)
{
  int count = 0;

  for (int i = 0; i < line->m; i++)
    if (line->s == 0 || line->size[i] > line->capacity[0])
      count += line->demand[i];
  return count;
}

static int
bars_by_length (const RwLine *part)
{
  gint64 left = size_of (part);
  int bars = 0;

  for (int k = 0; k < part->s; k++)
    for (int n = 0; n < part->limit[k] && left > 0; n++, bars++)
      left -= part->capacity[k];
  return bars;
}

/* A plan of a part that is found takes the place of best. */
static void
take_plan (RwLineSolution **best, RwLineSolution *plan, const RwLine *line, int left_out)
{
  if (plan == NULL)
    return;
  rw_line_solution_free (*best);
  plan->missing = left_out;
  plan->cost += left_out * line->penalty;
  *best = plan;
}

/* ---- the longest off-cut ---- */

static gint64
rest_of (const RwLine *line, const RwLinePattern *pattern)
{
  gint64 rest = line->capacity[pattern->stock];

  for (int i = 0; i < line->m; i++)
    rest -= pattern->pieces[i] * line->size[i];
  return rest;
}

static gint64
longest_rest (const RwLine *line, const RwLineSolution *solution)
{
  gint64 longest = 0;

  for (guint p = 0; p < solution->patterns->len; p++)
    longest = MAX (longest, rest_of (line, &g_array_index (solution->patterns, RwLinePattern, p)));
  return longest;
}

/* As all sizes, an off-cut's has a kerf in it. */
static RwLine
with_offcut (const RwLine *line, gint64 offcut, int *at)
{
  RwLine more = *line;
  int i = 0;

  more.m++;
  more.size = g_new (gint64, more.m);
  more.demand = g_new (int, more.m);
  while (i < line->m && line->size[i] >= offcut)
    i++;
  *at = i;
  memcpy (more.size, line->size, (gsize) i * sizeof (gint64));
  memcpy (more.demand, line->demand, (gsize) i * sizeof (int));
  more.size[i] = offcut;
  more.demand[i] = 1;
  memcpy (more.size + i + 1, line->size + i, (gsize) (line->m - i) * sizeof (gint64));
  memcpy (more.demand + i + 1, line->demand + i, (gsize) (line->m - i) * sizeof (int));
  return more;
}

static RwLineSolution *
without_piece (const RwLine *line, const RwLineSolution *more, int at)
{
  RwLineSolution *solution = rw_line_solution_copy (line, NULL);
  g_autofree int *pieces = g_new (int, line->m + 1);

  for (guint p = 0; p < more->patterns->len; p++)
    {
      const RwLinePattern *pattern = &g_array_index (more->patterns, RwLinePattern, p);
      int sum = 0;

      for (int i = 0; i < line->m; i++)
        {
          pieces[i] = pattern->pieces[i < at ? i : i + 1];
          sum += pieces[i];
        }
      if (sum > 0)
        rw_line_solution_add (solution, line, pattern->stock, pieces, pattern->times);
    }
  return solution;
}

/* Whether a plan leaves an off-cut of at least this; plan is set where one does. */
static Fits
leaves (Effort *effort, const RwLine *line, gint64 offcut, RwLineSolution **plan)
{
  int at;
  RwLine more = with_offcut (line, offcut, &at);
  g_autoptr (RwLineSolution) found = NULL;
  Fits answer = fits (effort, &more, &found);

  *plan = answer == FITS ? without_piece (line, found, at) : NULL;
  g_free (more.size);
  g_free (more.demand);
  return answer;
}

static void
take_longer (const RwLine *line, RwLineSolution **best, RwLineSolution *plan, gint64 *low)
{
  if (plan == NULL)
    return;
  *low = MAX (*low, longest_rest (line, plan));
  rw_line_solution_free (*best);
  *best = plan;
}

/* What certainly can't be left: by the relaxation, without any search. */
static gint64
too_long (RwLineWork *work, const RwLine *line, RwLineSolution **best, gint64 *low)
{
  Effort effort = { work, 0, 0, TRUE, (*best)->cost, 0 };
  gint64 from = *low, to = MIN (line->capacity[0], room_of (line) - size_of (line)) + 1;

  while (to - from > OFFCUT_STEP && !work->cancelled)
    {
      gint64 ask = from + (to - from) / 2;
      RwLineSolution *plan;

      if (leaves (&effort, line, ask, &plan) == FITS_NOT)
        {
          to = ask;
          continue;
        }
      take_longer (line, best, plan, low);
      from = MAX (ask, *low);
    }
  return to;
}

/* Asks for all that the relaxation allows, and then halves the room between what can be left and what can't or was not
 * found to. */
gint64
rw_line_leave_longest (RwLineWork *work, const RwLine *line, RwLineSolution **best)
{
  Effort effort = { work, 0, 0, FALSE, (*best)->cost, 0 };
  gint64 low = longest_rest (line, *best), sure = too_long (work, line, best, &low), high = sure;
  gint64 ask = MAX (low + 1, high - OFFCUT_STEP);
  guint left = STEPS_OFFCUTS;

  for (; high - low > OFFCUT_STEP && !work->cancelled; ask = low + (high - low + 1) / 2)
    {
      RwLineSolution *plan;
      Fits answer;

      effort.thorough = left / SHARES;
      answer = leaves (&effort, line, ask, &plan);
      left -= MIN (left, effort.taken);
      take_longer (line, best, plan, &low);
      if (answer != FITS)
        high = ask;
      if (answer == FITS_NOT)
        sure = ask;
    }
  return MAX (sure - 1, low);
}

RwLineSolution *
rw_line_fewest (RwLineWork *work, gboolean plain, gint64 *bound, gint64 *offcut)
{
  const RwLine *line = work->line;
  Effort effort = { work, plain ? STEPS_QUICK : STEPS_THOROUGH, plain ? 0 : STEPS_LONG, FALSE, 0, 0 };
  RwLineSolution *best = rw_line_greedy (line, NULL), *plan = NULL;
  RwLine part = part_of (line);
  int out, bars, known_out, known_bars;

  out = least (&effort, &part, line, leave_out_largest, longer_than_any_bar (line), best->missing, &plan, &known_out);
  take_plan (&best, plan, line, out);
  bars = (int) (best->cost - out * line->penalty);
  bars = least (&effort, &part, line, keep_longest, bars_by_length (&part), bars, &plan, &known_bars);
  take_plan (&best, plan, line, out);
  *bound = known_out * line->penalty + (known_out == out ? known_bars : 0);
  *offcut = -1;
  if (!plain && out == 0 && bars > 0 && !work->cancelled)
    *offcut = rw_line_leave_longest (work, &part, &best);
  part_clear (&part);
  return best;
}
