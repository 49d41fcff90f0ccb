#include "seams.h"

#include <math.h>

/* What is lost.  A text is the worse the longer it is: short ones can be moved out of the band.  Then comes what is
 * small enough to be whole on a page, holes above all. */
#define TEXT 100.0
#define TEXT_LENGTH 10.0 /* mm: as much again */
#define SHAPE_CUT 10.0
#define SHAPE_TOUCHED 1.0
/* mm: what is larger, and could yet be whole on a page, counts as little as if it were touched. */
#define SHAPE_SMALL 30.0
#define UNEVEN 0.001   /* for each place off the middle */

#define TEXT_AIR 0.5
#define SHAPE_AIR 1.5
#define STEP 1.0 /* mm, of the places tried */
#define PLACES_MAX 200

/* What lies along the run. */
typedef struct
{
  double   low, high;
  gboolean is_text;
} Span;

typedef struct
{
  const RwRun *run;
  GArray      *spans;
  double       step;
  int          places; /* of each seam */
} Search;

static void
add_span (const RwRun *run, RwBox box, double scale, double air, gboolean is_text, GArray *spans)
{
  double low = run->downwards ? -box.y1 : box.x0, high = run->downwards ? -box.y0 : box.x1;
  Span span = { low * scale - air, high * scale + air, is_text };

  if (is_text || span.high - span.low <= run->room)
    g_array_append_val (spans, span);
}

static GArray *
find_spans (const RwLayout *layout, const RwRun *run)
{
  GArray *spans = g_array_new (FALSE, FALSE, sizeof (Span));
  const GArray *items = layout->sheet->items;

  for (guint i = 0; i < layout->texts->len; i++)
    add_span (run, g_array_index (layout->texts, RwPlacedText, i).box, 1, TEXT_AIR, TRUE, spans);
  for (guint i = 0; i < items->len; i++)
    {
      const RwItem *item = &g_array_index (items, RwItem, i);

      /* Lines that lie along the seam are lost in it as much as holes are, and mistaken for its own. */
      if (item->kind == RW_ITEM_PATH && item->pen != RW_PEN_GRAIN)
        add_span (run, rw_item_extent (layout->sheet, item), layout->scale, SHAPE_AIR, FALSE, spans);
    }
  return spans;
}

/* Places of a seam are counted from the first at which the pages after it are enough. */
static double
place_of (const Search *search, int seam, int place)
{
  const RwRun *run = search->run;

  return run->high - run->room - (run->pages - 2 - seam) * (run->room - run->overlap) + place * search->step;
}

/* Of a shape that lies in a band from at on.  A line along the seam is lost wherever it lies. */
static double
loss_of_shape (const Span *span, double at)
{
  double length = span->high - span->low;
  gboolean cut = (span->low < at && span->high > at) || length <= 2 * SHAPE_AIR;

  return cut && length <= SHAPE_SMALL ? SHAPE_CUT : SHAPE_TOUCHED;
}

static double
loss_at (const Search *search, double at)
{
  double end = at + search->run->overlap, loss = 0;

  for (guint i = 0; i < search->spans->len; i++)
    {
      const Span *span = &g_array_index (search->spans, Span, i);

      if (span->low >= end || span->high <= at)
        continue;
      if (span->is_text)
        loss += TEXT * (1 + (span->high - span->low) / TEXT_LENGTH);
      else
        loss += loss_of_shape (span, at);
    }
  return loss;
}

/* Of the seams up to one at a place: the least loss, and where the one before it is then. */
typedef struct
{
  double loss;
  int    before;
} State;

/* No page is longer than its room: of two neighbours the later one has no later place than the earlier, and their
 * bands keep clear of each other. */
static void
best_before (const Search *search, const State *earlier, State *state, int place)
{
  double farthest = (search->run->room - 2 * search->run->overlap) / search->step;
  const State *best = NULL;

  for (int k = place; k < search->places && k - place <= farthest; k++)
    if (best == NULL || earlier[k].loss < best->loss)
      {
        best = &earlier[k];
        state->before = k;
      }
  g_assert (best != NULL);
  state->loss += best->loss;
}

static void
fill_states (const Search *search, State *states)
{
  for (int seam = 0; seam < search->run->pages - 1; seam++)
    for (int place = 0; place < search->places; place++)
      {
        State *state = &states[seam * search->places + place];

        state->loss = loss_at (search, place_of (search, seam, place));
        state->loss += UNEVEN * fabs (place - (search->places - 1) / 2.0);
        if (seam > 0)
          best_before (search, state - place - search->places, state, place);
      }
}

static void
read_seams (const Search *search, const State *states, double *seams)
{
  int last = search->run->pages - 2, place = 0;
  const State *row = states + last * search->places;

  for (int k = 1; k < search->places; k++)
    if (row[k].loss < row[place].loss)
      place = k;
  for (int seam = last; seam >= 0; seam--)
    {
      seams[seam] = place_of (search, seam, place);
      place = states[seam * search->places + place].before;
    }
}

void
rw_seams_find (const RwLayout *layout, const RwRun *run, double *seams)
{
  if (run->pages < 2)
    return;

  double covered = run->pages * (run->room - run->overlap) + run->overlap;
  double spare = MAX (0, covered - (run->high - run->low));
  int places = 1 + (int) MIN (PLACES_MAX, ceil (spare / STEP));
  g_autoptr (GArray) spans = find_spans (layout, run);
  const Search search = { run, spans, places > 1 ? spare / (places - 1) : 1, places };
  g_autofree State *states = g_new0 (State, (gsize) places * (gsize) (run->pages - 1));

  fill_states (&search, states);
  read_seams (&search, states, seams);
}
