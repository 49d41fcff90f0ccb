#include "remedy_cures.h"

#include <math.h>
#include <string.h>

/* All attempts for one finding together, and the steps of one search.  An attempt is a solve and a check. */
#define MANY_ATTEMPTS 110
#define MANY_STEPS 24
/* A count is moved no farther than this. */
#define FAR_COUNT 12
/* More than these nobody reads. */
#define MANY_REMEDIES 5

typedef enum
{
  IN_VAIN,
  TRADED, /* the finding is gone, and there is a note that was not there */
  BETTER, /* the finding is less severe */
  GONE,
} Effect;

typedef struct
{
  const RwDesign   *design;
  const RwMeasured *measured;
  const RwFinding  *finding;
  GPtrArray        *before; /* all findings of the design as it is */
  RwResult         *result; /* of the present attempt */
  gboolean          unheard; /* a finding of a side view without solution: no caution of it can have been heard */
  int               left;   /* attempts */
  GPtrArray        *remedies;
} Search;

void
rw_remedy_free (RwRemedy *remedy)
{
  if (remedy == NULL)
    return;
  g_free (remedy->text);
  g_free (remedy->word);
  g_free (remedy);
}

char *
rw_remedy_words (const RwRemedy *remedy, const char *pattern, RwStyle style)
{
  char *ids[] = { remedy->word, NULL };
  const RwFinding said = {
    .ids = ids,
    .values = (double *) remedy->values,
    .value_count = remedy->value_count,
  };

  return rw_finding_words (&said, pattern, style);
}

/* ---- the proof ---- */

static gboolean
is_free (const RwMeasured *measured, RwParamId id)
{
  if (measured == NULL)
    return TRUE;
  if (isfinite (measured->param[id]) || measured->holds_param[id])
    return FALSE;
  for (int k = 0; id == RW_P_rim_course_thickness && k < RW_COURSES_MAX; k++)
    if (isfinite (measured->course_thickness[k]))
      return FALSE;
  return TRUE;
}

/* Whether something was changed, and nothing that is a fact. */
static gboolean
may_be_changed (const Search *search, const RwDesign *design)
{
  gboolean any = FALSE;

  for (int id = 0; id < RW_PARAM_COUNT; id++)
    if (!rw_design_same (search->design, design, (RwParamId) id))
      {
        if (!is_free (search->measured, (RwParamId) id))
          return FALSE;
        any = TRUE;
      }
  return any;
}

/* Findings of the rule that are as severe, or more. */
static int
count (const GPtrArray *findings, const char *rule, RwSeverity severity)
{
  int sum = 0;

  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      sum += finding->severity <= severity && strcmp (finding->rule, rule) == 0;
    }
  return sum;
}

int
rw_remedy_new_notes (const GPtrArray *before, const GPtrArray *after)
{
  int sum = 0;

  for (guint i = 0; i < after->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (after, i);

      sum += finding->severity == RW_NOTE && count (before, finding->rule, RW_NOTE) == 0;
    }
  return sum;
}

static gboolean
does_harm (const Search *search, const GPtrArray *after)
{
  RwSeverity worst = search->unheard ? RW_STOP : RW_CAUTION;

  for (guint i = 0; i < after->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (after, i);

      if (finding->severity <= worst
          && count (after, finding->rule, finding->severity)
               > count (search->before, finding->rule, finding->severity))
        return TRUE;
    }
  return FALSE;
}

static Effect
try_design (Search *search, const RwDesign *design)
{
  const RwFinding *finding = search->finding;
  const char *rule = finding->rule;

  search->left--;
  rw_solve (design, search->measured, search->result);
  g_autoptr (GPtrArray) after = rw_check (design, search->measured, search->result);
  if (does_harm (search, after)
      || count (after, rule, finding->severity) >= count (search->before, rule, finding->severity))
    return IN_VAIN;
  if (count (after, rule, RW_NOTE) >= count (search->before, rule, RW_NOTE))
    return BETTER;
  return rw_remedy_new_notes (search->before, after) > 0 ? TRADED : GONE;
}

static void
offer (Search *search, RwRemedy *remedy)
{
  remedy->text = rw_remedy_words (remedy, remedy->pattern, RW_STYLE_FILE);
  g_ptr_array_add (search->remedies, remedy);
}

/* ---- one number ---- */

/* A way to go: whole steps from the present value on, so that what is found is a round number. */
typedef struct
{
  Search       *search;
  const RwCure *cure;
  double        from, step; /* step < 0: downwards */
  int           most;       /* steps to the end of the range, or of what is sensible */
} Walk;

static double
value_at (const Walk *walk, int k)
{
  double value = (walk->from + k) * walk->step;

  return round (value * 1e6) / 1e6; /* 16.6, not 16.600000000000001 */
}

static Effect
try_step (const Walk *walk, int k)
{
  RwDesign design = *walk->search->design;

  if (!rw_design_set (&design, walk->cure->param, value_at (walk, k), NULL))
    return IN_VAIN;
  return try_design (walk->search, &design);
}

static Walk
walk_new (Search *search, const RwCure *cure, int sign)
{
  const RwParam *param = rw_param (cure->param);
  double step = cure->step > 0 ? cure->step : param->step;
  double value = rw_design_get (search->design, cure->param);
  double end = sign > 0 ? param->max : param->min;
  double from = floor (sign * value / step + 1e-6);
  double most = fabs (end - value) / step;

  return (Walk){ search, cure, from, sign * step,
                 (int) fmin (most + 1, param->kind == RW_KIND_COUNT ? FAR_COUNT : 10000) };
}

/* Steps that grow: each at first, then every third part farther. */
static int
farther (const Walk *walk, int k)
{
  return rw_param (walk->cure->param)->kind == RW_KIND_COUNT || k < 3 ? k + 1 : k + k / 3;
}

/* The last step, counted from good on, that has the effect; good has it, and bad has not. */
static int
narrow (const Walk *walk, int good, int bad, Effect effect)
{
  while (abs (bad - good) > 1)
    {
      int middle = (good + bad) / 2;

      if (try_step (walk, middle) >= effect)
        good = middle;
      else
        bad = middle;
    }
  return good;
}

/* From the first step that helps to the middle of those that do. */
static int
aim (const Walk *walk, int first, Effect effect)
{
  int good = first, bad = farther (walk, first);

  while (bad <= walk->most && try_step (walk, bad) >= effect)
    {
      good = bad;
      bad = farther (walk, good);
    }
  int middle = (first + narrow (walk, good, bad, effect)) / 2;

  return try_step (walk, middle) >= effect ? middle : first;
}

/* The step that helps: 0 for none.  What is better already is not given away for a finding of another kind. */
static int
search_steps (const Walk *walk)
{
  int last_bad = 0, best = 0;
  Effect effect = IN_VAIN, now = IN_VAIN;

  for (int k = 1, tries = 0;
       k <= walk->most && tries < MANY_STEPS && walk->search->left > 0 && now != TRADED && now != GONE;
       k = farther (walk, k), tries++)
    {
      now = try_step (walk, k);
      if (now > effect)
        {
          effect = now;
          best = narrow (walk, k, last_bad, effect);
        }
      last_bad = k;
    }
  return best > 0 && (walk->cure->way & RW_AIM) ? aim (walk, best, effect) : best;
}

static void
offer_step (const Walk *walk, int k)
{
  const RwCure *cure = walk->cure;
  double before = rw_design_get (walk->search->design, cure->param), after = value_at (walk, k);
  RwRemedy *remedy = g_new0 (RwRemedy, 1);

  remedy->param = cure->param;
  remedy->design = *walk->search->design;
  rw_design_set (&remedy->design, cure->param, after, NULL);
  remedy->pattern = walk->step > 0 ? cure->more : cure->less;
  remedy->values[0] = after;
  remedy->values[1] = fabs (after - before);
  remedy->values[2] = before;
  remedy->value_count = 3;
  offer (walk->search, remedy);
}

/* Both ways, where both may help; the nearer one is offered first. */
static void
search_number (Search *search, const RwCure *cure)
{
  Walk up = walk_new (search, cure, 1), down = walk_new (search, cure, -1);
  int more = cure->way & RW_RAISE ? search_steps (&up) : 0;
  int less = cure->way & RW_LOWER ? search_steps (&down) : 0;

  if (less > 0 && less < more)
    offer_step (&down, less);
  if (more > 0)
    offer_step (&up, more);
  if (less > 0 && (more == 0 || less >= more))
    offer_step (&down, less);
}

static void
search_numbers (Search *search, const RwCure *cures, int number)
{
  for (int i = 0; i < number; i++)
    if (strcmp (cures[i].rule, search->finding->rule) == 0 && is_free (search->measured, cures[i].param)
        && search->left > 0)
      search_number (search, &cures[i]);
}

/* ---- anything else ---- */

static void
search_special (Search *search, RwAttempt attempt)
{
  RwRemedy *remedy = g_new0 (RwRemedy, 1);

  for (int i = 0; search->left > 0; i++)
    {
      remedy->design = *search->design;
      if (!attempt (remedy, i))
        break;
      Effect effect = may_be_changed (search, &remedy->design) ? try_design (search, &remedy->design) : IN_VAIN;

      if (effect == GONE || effect == TRADED)
        {
          offer (search, g_steal_pointer (&remedy));
          break;
        }
    }
  rw_remedy_free (remedy);
}

/* What is made is asked for again. */
static void
search_made (Search *search)
{
  g_autoptr (GPtrArray) tries = NULL;

  if (search->measured == NULL || strcmp (search->finding->rule, "made.misfit") != 0)
    return;
  tries = rw_remedies_for_made (search->design, search->measured, search->finding);
  while (tries->len > 0 && search->left > 0)
    {
      RwRemedy *remedy = g_ptr_array_steal_index (tries, 0);

      if (try_design (search, &remedy->design) > IN_VAIN)
        offer (search, remedy);
      else
        rw_remedy_free (remedy);
    }
}

GPtrArray *
rw_remedies (const RwDesign *design, const RwMeasured *measured, const RwFinding *finding)
{
  g_autofree RwResult *result = g_new (RwResult, 1);
  Search search = {
    .design = design,
    .measured = measured,
    .finding = finding,
    .result = result,
    .left = MANY_ATTEMPTS,
    .remedies = g_ptr_array_new_with_free_func ((GDestroyNotify) rw_remedy_free),
  };

  rw_solve (design, measured, result);
  search.unheard = result->side.outcome != RW_SIDE_SOLVED && g_str_has_prefix (finding->rule, "side.");
  search.before = rw_check (design, measured, result);
  for (int i = 0; i < rw_special_cures_count; i++)
    if (strcmp (rw_special_cures[i].rule, finding->rule) == 0)
      search_special (&search, rw_special_cures[i].attempt);
  search_made (&search);
  search_numbers (&search, rw_cures_setup, rw_cures_setup_count);
  search_numbers (&search, rw_cures_pot, rw_cures_pot_count);
  search_numbers (&search, rw_cures_rim, rw_cures_rim_count);
  search_numbers (&search, rw_cures_neck, rw_cures_neck_count);
  rw_remedies_rank (search.remedies, design, measured, search.before);
  g_ptr_array_unref (search.before);
  if (search.remedies->len > MANY_REMEDIES)
    g_ptr_array_set_size (search.remedies, MANY_REMEDIES);
  return search.remedies;
}
