#include "stock_remedy.h"

#include <math.h>
#include <string.h>

#include "stock_change.h"

/* More than these nobody reads. */
#define MANY_REMEDIES 6
/* One change after the other, where none alone will do. */
#define MANY_ROUNDS 5
#define MANY_TRIALS 600

typedef struct
{
  const RwMeasured *measured;
  const RwShelf    *shelf;
  GPtrArray        *before; /* findings of the build as it is */
  RwResult         *result;
  RwCutGoOn         go_on;
  gpointer          data;
  int               trials;
  GPtrArray        *found;  /* of RwStockRemedy: those that leave nothing missing */
  GPtrArray        *partly; /* those that at least settle one kind of piece */
} Search;

void
rw_stock_remedy_free (RwStockRemedy *remedy)
{
  g_ptr_array_unref (remedy->changes);
  g_free (remedy);
}

static gboolean
is_fact (const RwMeasured *measured, RwParamId id)
{
  if (measured == NULL)
    return FALSE;
  for (int k = 0; id == RW_P_rim_course_thickness && k < RW_COURSES_MAX; k++)
    if (isfinite (measured->course_thickness[k]))
      return TRUE;
  return isfinite (measured->param[id]) || measured->holds_param[id];
}

static int
count_findings (const GPtrArray *findings, const char *rule)
{
  int count = 0;

  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      count += finding->severity < RW_NOTE && strcmp (finding->rule, rule) == 0;
    }
  return count;
}

static gboolean
does_harm (const Search *search, const RwDesign *design)
{
  g_autoptr (GPtrArray) after = rw_check (design, search->measured, search->result);

  for (guint i = 0; i < after->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (after, i);

      if (finding->severity < RW_NOTE
          && count_findings (after, finding->rule) > count_findings (search->before, finding->rule))
        return TRUE;
    }
  return FALSE;
}

static int
kinds_missing (const RwCutting *cutting)
{
  int kinds = 0;

  for (guint i = 0; i < cutting->pieces->len; i++)
    kinds += cutting->missing[i] > 0;
  return kinds;
}

/* How many pieces would be missing, and of how many kinds; -1 where the design is no good or the work is given up. */
static int
missing_with (Search *search, const RwDesign *design, int *kinds)
{
  if (search->trials <= 0 || (search->go_on != NULL && !search->go_on (search->data)))
    return -1;
  search->trials--;
  rw_solve (design, search->measured, search->result);
  if (does_harm (search, design))
    return -1;
  g_autoptr (RwCutting) cutting = rw_cutting_new (search->result, search->shelf, TRUE, search->go_on, search->data);
  *kinds = kinds_missing (cutting);
  return cutting->whole ? cutting->missing_total : -1;
}

static RwRemedy *
copy_change (const RwRemedy *change)
{
  RwRemedy *copy = g_memdup2 (change, sizeof *change);

  copy->text = g_strdup (change->text);
  copy->word = g_strdup (change->word);
  return copy;
}

static void
free_change (gpointer data)
{
  rw_remedy_free (data);
}

/* The changes of a choice after those of another. */
static RwStockRemedy *
new_remedy (const RwStockRemedy *first, const GPtrArray *choice, int missing)
{
  RwStockRemedy *remedy = g_new0 (RwStockRemedy, 1);

  remedy->changes = g_ptr_array_new_with_free_func (free_change);
  for (guint i = 0; first != NULL && i < first->changes->len; i++)
    g_ptr_array_add (remedy->changes, copy_change (g_ptr_array_index (first->changes, i)));
  for (guint i = 0; i < choice->len; i++)
    g_ptr_array_add (remedy->changes, copy_change (g_ptr_array_index (choice, i)));
  remedy->design = ((const RwRemedy *) g_ptr_array_index (choice, choice->len - 1))->design;
  remedy->missing = missing;
  return remedy;
}

static gboolean
touches_fact (const Search *search, const GPtrArray *choice)
{
  for (guint i = 0; i < choice->len; i++)
    if (is_fact (search->measured, ((const RwRemedy *) g_ptr_array_index (choice, i))->param))
      return TRUE;
  return FALSE;
}

/* One or two remedies of a kind are choice enough. */
static gboolean
is_one_of_many (const GPtrArray *remedies, const GPtrArray *choice)
{
  RwParamId param = ((const RwRemedy *) g_ptr_array_index (choice, choice->len - 1))->param;
  int count = 0;

  for (guint i = 0; i < remedies->len; i++)
    {
      const RwStockRemedy *remedy = g_ptr_array_index (remedies, i);
      const RwRemedy *last = g_ptr_array_index (remedy->changes, remedy->changes->len - 1);

      count += last->param == param;
    }
  return count > 1;
}

/* Whether a remedy that is found does with some of these changes alone, which come after first. */
static gboolean
is_more_than_needed (const GPtrArray *found, const RwStockRemedy *first, const GPtrArray *choice)
{
  guint count = choice->len + (first != NULL ? first->changes->len : 0);
  const RwDesign *design = &((const RwRemedy *) g_ptr_array_index (choice, choice->len - 1))->design;

  for (guint i = 0; i < found->len; i++)
    {
      const RwStockRemedy *remedy = g_ptr_array_index (found, i);
      gboolean all = remedy->changes->len < count;

      for (guint k = 0; k < remedy->changes->len && all; k++)
        {
          const RwRemedy *change = g_ptr_array_index (remedy->changes, k);

          all = rw_design_same (&remedy->design, design, change->param);
        }
      if (all)
        return TRUE;
    }
  return FALSE;
}

/* Tries every choice after first, and returns what leaves the least, where it is less than before. */
static RwStockRemedy *
try_round (Search *search, const RwCutting *cutting, const RwDesign *design, const RwStockRemedy *first)
{
  g_autoptr (GPtrArray) choices = rw_stock_changes (cutting, design);
  RwStockRemedy *best = NULL;
  int least = cutting->missing_total, kinds_before = kinds_missing (cutting);

  for (guint i = 0; i < choices->len && search->found->len < MANY_REMEDIES; i++)
    {
      const GPtrArray *choice = g_ptr_array_index (choices, i);
      const RwRemedy *last = g_ptr_array_index (choice, choice->len - 1);
      int kinds = 0, missing;

      if (touches_fact (search, choice) || is_one_of_many (search->found, choice)
          || is_more_than_needed (first == NULL ? search->partly : search->found, first, choice)
          || is_more_than_needed (search->found, first, choice))
        continue;
      missing = missing_with (search, &last->design, &kinds);
      if (missing == 0)
        g_ptr_array_add (search->found, new_remedy (first, choice, 0));
      else if (missing > 0 && missing < least)
        {
          g_clear_pointer (&best, rw_stock_remedy_free);
          best = new_remedy (first, choice, missing);
          least = missing;
        }
      if (missing > 0 && first == NULL && kinds < kinds_before && !is_one_of_many (search->partly, choice))
        g_ptr_array_add (search->partly, new_remedy (NULL, choice, missing));
    }
  return best;
}

/* What is still missing with a remedy. */
static RwCutting *
cutting_with (Search *search, const RwStockRemedy *remedy)
{
  rw_solve (&remedy->design, search->measured, search->result);
  return rw_cutting_new (search->result, search->shelf, TRUE, search->go_on, search->data);
}

static gint
fewer_changes (gconstpointer a, gconstpointer b)
{
  const RwStockRemedy *p = *(RwStockRemedy *const *) a, *q = *(RwStockRemedy *const *) b;

  if ((p->missing > 0) != (q->missing > 0))
    return p->missing > 0 ? 1 : -1;
  return (gint) p->changes->len - (gint) q->changes->len;
}

/* One change after the other, each time the one that leaves the least, until nothing is missing. */
static void
search_rounds (Search *search, const RwCutting *cutting, const RwDesign *design)
{
  RwStockRemedy *best = cutting->missing_total > 0 ? try_round (search, cutting, design, NULL) : NULL;

  for (int round = 1; round < MANY_ROUNDS && search->found->len == 0 && best != NULL; round++)
    {
      g_autoptr (RwCutting) left = cutting_with (search, best);
      RwStockRemedy *next = try_round (search, left, &best->design, best);

      rw_stock_remedy_free (best);
      best = next;
    }
  g_clear_pointer (&best, rw_stock_remedy_free);
}

/* What the instrument comes to with each remedy, against what it came to before. */
static void
weigh (Search *search, double mass_before, double balance_before)
{
  for (guint i = 0; i < search->found->len; i++)
    {
      RwStockRemedy *remedy = g_ptr_array_index (search->found, i);

      rw_solve (&remedy->design, search->measured, search->result);
      remedy->mass = search->result->value[RW_WEIGHT_TOTAL];
      remedy->balance = search->result->value[RW_WEIGHT_BALANCE];
      remedy->mass_more = remedy->mass - mass_before;
      remedy->balance_more = remedy->balance - balance_before;
    }
}

GPtrArray *
rw_stock_remedies (const RwDesign *design, const RwMeasured *measured, const RwShelf *shelf, const RwCutting *cutting,
                   RwCutGoOn go_on, gpointer data)
{
  GDestroyNotify release = (GDestroyNotify) rw_stock_remedy_free;
  Search search = { measured, shelf, NULL, g_new (RwResult, 1), go_on, data, MANY_TRIALS,
                    g_ptr_array_new_with_free_func (release), g_ptr_array_new_with_free_func (release) };

  rw_solve (design, measured, search.result);
  double mass = search.result->value[RW_WEIGHT_TOTAL], balance = search.result->value[RW_WEIGHT_BALANCE];
  search.before = rw_check (design, measured, search.result);
  search_rounds (&search, cutting, design);
  while (search.partly->len > 0 && search.found->len < MANY_REMEDIES)
    g_ptr_array_add (search.found, g_ptr_array_steal_index (search.partly, 0));
  g_ptr_array_sort (search.found, fewer_changes);
  weigh (&search, mass, balance);
  g_ptr_array_unref (search.partly);
  g_ptr_array_unref (search.before);
  g_free (search.result);
  return search.found;
}
