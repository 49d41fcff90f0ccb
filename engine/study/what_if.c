#include "what_if.h"

#include <glib/gi18n-lib.h>

#include "model/model.h"
#include "study_parts.h"

#define STEPS 60 /* of the curve */
#define MOVED 1e-9 /* of a result: less is no change */

/* ---- what is asked ---- */

static void
add_result (const RwResult *now, int slot, RwSlot *slots, int *count)
{
  if (*count < RW_WHAT_IF_RESULTS && isfinite (now->value[slot]))
    slots[(*count)++] = (RwSlot) slot;
}

int
rw_what_if_results (const RwResult *now, RwSlot *slots)
{
  static const RwSlot fixed[] = { RW_BRIDGE_HEIGHT, RW_BRIDGE_BREAK_ANGLE, RW_BRIDGE_DOWN_FORCE, RW_BRIDGE_SAG,
                                  RW_HEAD_TAP_FREQUENCY, RW_NECK_ANGLE, RW_STRINGS_TENSION_TOTAL,
                                  RW_BRIDGE_BEST_OFFSET };
  int count = 0;

  add_result (now, RW_SETUP_ACTION + 12, slots, &count);
  for (gsize i = 0; i < G_N_ELEMENTS (fixed); i++)
    add_result (now, fixed[i], slots, &count);
  for (int i = 1; i <= now->plan.strings; i++)
    add_result (now, RW_BRIDGE_COMPENSATION + i, slots, &count);
  return count;
}

/* Puts a number as it came out in the place of one that was asked for; refused where it is out of range, which
 * leaves the question as it stood. */
static void
hold (RwDesign *design, RwParamId param, double value)
{
  rw_design_set (design, param, value, NULL);
}

static gboolean
is_action (RwSlot slot)
{
  return slot >= RW_SETUP_ACTION && slot <= RW_SETUP_ACTION_LAST;
}

static void
hold_parts (RwDesign *design, const RwResult *now, RwSlot slot)
{
  if (is_action (slot) && design->neck_solve_for != RW_SOLVE_ACTION)
    {
      hold (design, RW_P_neck_angle, now->value[RW_NECK_ANGLE]);
      hold (design, RW_P_bridge_height, now->value[RW_BRIDGE_HEIGHT]);
      design->neck_solve_for = RW_SOLVE_ACTION;
    }
  if (slot == RW_BRIDGE_HEIGHT && design->neck_solve_for != RW_SOLVE_BRIDGE)
    {
      hold (design, RW_P_neck_angle, now->value[RW_NECK_ANGLE]);
      hold (design, RW_P_setup_action, now->side.action);
      design->neck_solve_for = RW_SOLVE_BRIDGE;
    }
  if (slot == RW_HEAD_TAP_FREQUENCY && design->head_tension_from == RW_TENSION_FROM_TAP)
    {
      hold (design, RW_P_head_tension, now->value[RW_HEAD_TENSION]);
      design->head_tension_from = RW_TENSION_GIVEN;
    }
}

RwWhatIf
rw_what_if_new (const RwDesign *design, const RwMeasured *measured, const RwResult *now, RwSlot slot, RwParamId param)
{
  RwWhatIf what = { *design, measured, slot, param, 0 };

  hold_parts (&what.base, now, slot);
  what.now = rw_design_get (&what.base, param);
  return what;
}

const char *
rw_what_if_held (const RwWhatIf *what, const RwDesign *design)
{
  const RwDesign *base = &what->base;

  if (base->neck_solve_for != design->neck_solve_for)
    return base->neck_solve_for == RW_SOLVE_ACTION ? N_("The neck angle is held as it is.")
                                                   : N_("The neck angle and the action are held as they are.");
  if (base->head_tension_from != design->head_tension_from)
    return N_("The tension is set instead of the tap note.");
  return NULL;
}

gboolean
rw_what_if_apply (const RwWhatIf *what, double value, RwDesign *design)
{
  *design = what->base;
  return rw_design_set (design, what->param, value, NULL);
}

/* The result at a value of the parameter; NaN where there is none.  One solve. */
static double
result_at (const RwWhatIf *what, double value)
{
  g_autofree RwResult *result = g_new (RwResult, 1);
  RwDesign design;

  if (!rw_what_if_apply (what, value, &design))
    return NAN;
  rw_solve (&design, what->measured, result);
  return result->value[what->slot];
}

static gboolean
differs (double a, double b)
{
  return isfinite (a) != isfinite (b) || fabs (a - b) > MOVED * (1 + fabs (a));
}

gboolean
rw_what_if_moves (const RwWhatIf *what)
{
  const RwParam *param = rw_param (what->param);
  double now = result_at (what, what->now);

  return (what->now + param->step <= param->max && differs (now, result_at (what, what->now + param->step)))
         || (what->now - param->step >= param->min && differs (now, result_at (what, what->now - param->step)));
}

/* ---- the curve ---- */

static void
choose_places (const RwWhatIf *what, RwWhatIfCurve *curve)
{
  const RwParam *param = rw_param (what->param);
  double span = param->max - param->min;
  gboolean counts = param->kind == RW_KIND_COUNT;
  int steps = counts ? (int) fmin (STEPS, span) : STEPS;

  curve->count = 0;
  for (int i = 0; i <= steps; i++)
    {
      double place = param->min + span * i / steps;

      curve->at[curve->count++] = counts ? round (place) : place;
    }
  curve->at[curve->count++] = what->now;
  curve->count = rw_study_sort_places (curve->at, curve->count);
}

void
rw_what_if_curve (const RwWhatIf *what, RwWhatIfCurve *curve)
{
  choose_places (what, curve);
  for (guint i = 0; i < curve->count; i++)
    curve->values[i] = result_at (what, curve->at[i]);
}

/* ---- solving ---- */

typedef struct
{
  const RwWhatIf *what;
  double wanted;
} Goal;

static double
miss (double value, void *data)
{
  const Goal *goal = data;

  return result_at (goal->what, value) - goal->wanted;
}

/* How far a piece of the curve is from the present value; 0 for one that holds it. */
static double
away (const RwWhatIf *what, double from, double to)
{
  return fmax (0, fmax (from - what->now, what->now - to));
}

static double
nearest_root (const RwWhatIf *what, const RwWhatIfCurve *curve, double wanted)
{
  const double *at = curve->at, *values = curve->values;
  Goal goal = { what, wanted };
  double best = NAN, least = INFINITY;

  for (guint i = 0; i + 1 < curve->count; i++)
    {
      gboolean crosses = (values[i] <= wanted && values[i + 1] >= wanted)
                         || (values[i] >= wanted && values[i + 1] <= wanted);
      double root;

      if (!crosses || away (what, at[i], at[i + 1]) >= least)
        continue;
      root = rw_root (miss, &goal, at[i], at[i + 1]);
      if (!isfinite (root))
        continue;
      best = root;
      least = away (what, at[i], at[i + 1]);
    }
  return best;
}

static double
nearest_count (const RwWhatIfCurve *curve, double wanted)
{
  const double *values = curve->values;
  guint best = curve->count;

  for (guint i = 0; i < curve->count; i++)
    if (isfinite (values[i]) && (best == curve->count || fabs (values[i] - wanted) < fabs (values[best] - wanted)))
      best = i;
  return best < curve->count ? curve->at[best] : NAN;
}

RwWhatIfAnswer
rw_what_if_solve (const RwWhatIf *what, const RwWhatIfCurve *curve, double wanted)
{
  RwWhatIfAnswer answer = { RW_WHAT_IF_NEVER, NAN, NAN, INFINITY, -INFINITY };

  for (guint i = 0; i < curve->count; i++)
    if (isfinite (curve->values[i]))
      {
        answer.low = fmin (answer.low, curve->values[i]);
        answer.high = fmax (answer.high, curve->values[i]);
      }
  if (answer.low <= answer.high)
    answer.reach = RW_WHAT_IF_BEYOND;
  if (answer.reach == RW_WHAT_IF_NEVER || !isfinite (wanted))
    return answer;
  if (rw_param (what->param)->kind == RW_KIND_COUNT)
    {
      answer.value = nearest_count (curve, wanted);
      answer.reach = RW_WHAT_IF_NEAREST;
    }
  else
    {
      answer.value = nearest_root (what, curve, wanted);
      answer.reach = isfinite (answer.value) ? RW_WHAT_IF_REACHED : RW_WHAT_IF_BEYOND;
    }
  answer.result = isfinite (answer.value) ? result_at (what, answer.value) : NAN;
  return answer;
}
