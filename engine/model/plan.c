/* The neck in plan: strings, edges of the board, fret places.  Frame: x along the axis from the nut line
 * towards the body, y to the treble side. */
#include "plan.h"

#include "slots.h"

double
rw_plan_string_y (const RwPlan *plan, int string, double x)
{
  double x0 = 0, y0 = plan->nut_y[string];

  if (plan->has_short && string == plan->strings)
    {
      x0 = plan->short_x;
      y0 = plan->short_y;
    }
  return y0 + (plan->bridge_y[string] - y0) * (x - x0) / (plan->length - x0);
}

double
rw_plan_treble (const RwPlan *plan, double x)
{
  return rw_plan_string_y (plan, 1, x) + plan->edge_margin;
}

/* Along the last full-length string, then by a smooth ramp to the short one. */
double
rw_plan_bass (const RwPlan *plan, double x)
{
  double narrow = rw_plan_string_y (plan, plan->full, x) - plan->edge_margin;

  if (!plan->has_short || x <= plan->shoulder_from)
    return narrow;

  double wide = rw_plan_string_y (plan, plan->strings, x) - plan->edge_margin;
  double t = MIN (1, (x - plan->shoulder_from) / (plan->shoulder_to - plan->shoulder_from));
  return narrow + (wide - narrow) * (3 * t * t - 2 * t * t * t);
}

double
rw_plan_centre (const RwPlan *plan, double x)
{
  return plan->nut_middle + plan->centre_slope * x;
}

double
rw_plan_width (const RwPlan *plan, double x)
{
  return rw_plan_treble (plan, x) - rw_plan_bass (plan, x);
}

double
rw_plan_middle (const RwPlan *plan, double x)
{
  return 0.5 * (rw_plan_treble (plan, x) + rw_plan_bass (plan, x));
}

/* L (1 - 1/q) for a note q times as high.  Measured places count as measured.
 * Source: equal temperament; G. Byers, "Classic guitar intonation", American Lutherie 47 (1996). */
static void
place_frets (RwModel *m, RwPlan *plan)
{
  gboolean across = m->d->frets_slots == RW_SLOTS_ACROSS;

  plan->last = m->d->frets_count > 0 ? (int) m->d->frets_count : 24;
  for (int n = 0; n <= RW_FRETS_MAX; n++)
    {
      plan->fret_x[n] = plan->length * (1 - exp2 (-rw_fret_cents (m->d, n) / 1200));
      if (n >= 1 && n <= plan->last && across)
        plan->fret_x[n] = rw_settle (m, RW_FRETS_POSITION + n, plan->fret_x[n]);
    }
}

/* What each string is to sound at each fret, and where it has slots of its own for that. */
static void
place_slots (RwModel *m, const RwPlan *plan)
{
  for (int i = 1; i <= plan->strings; i++)
    {
      int first = i > plan->full ? (int) m->d->fifth_start_fret + 1 : 1;

      for (int n = first; n <= RW_FRETS_MAX; n++)
        {
          m->wanted[i][n] = rw_slot_cents (m->d, i, n);
          if (n <= plan->last && m->d->frets_slots == RW_SLOTS_OWN)
            rw_settle (m, RW_SLOT2 (RW_FRETS_SLOT, i, n), rw_slot_planned (m->d, plan, i, n));
        }
    }
}

static void
place_short_string (RwModel *m, RwPlan *plan)
{
  int start = (int) m->d->fifth_start_fret, last = plan->strings;

  plan->short_x = plan->fret_x[start];
  plan->shoulder_to = plan->short_x - m->d->fifth_shoulder;
  plan->shoulder_from = plan->shoulder_to - m->d->fifth_shoulder_length;
  plan->short_y = rw_settle (m, RW_STRINGS_START_Y + last,
                             rw_plan_string_y (plan, last - 1, plan->short_x) - m->d->fifth_spacing);
}

static void
place_strings (RwModel *m, RwPlan *plan)
{
  const RwDesign *d = m->d;
  double c = (plan->strings + 1) / 2.0;
  double pitch = rw_settle (m, RW_STRINGS_NUT_PITCH,
                            (d->nut_width - 2 * d->nut_edge_margin) / (plan->full - 1));

  for (int i = 1; i <= plan->strings; i++)
    {
      plan->bridge_y[i] = rw_settle (m, RW_STRINGS_BRIDGE_Y + i,
                                     (c - i) * d->bridge_spread / (plan->strings - 1));
      plan->nut_y[i] = (c - i) * pitch;
      if (i <= plan->full)
        plan->nut_y[i] = rw_settle (m, RW_STRINGS_NUT_Y + i, plan->nut_y[i]);
    }
}

void
rw_model_plan (RwModel *m)
{
  RwPlan *plan = &m->r->plan;
  const RwStringSet *set = &m->d->strings_set;

  *plan = (RwPlan){ .strings = set->count, .edge_margin = m->d->nut_edge_margin, .length = m->d->scale_length };
  plan->has_short = set->at[set->count - 1].is_short;
  plan->full = plan->strings - (plan->has_short ? 1 : 0);
  place_frets (m, plan);
  place_strings (m, plan);
  plan->short_x = plan->short_y = NAN;
  if (plan->has_short)
    place_short_string (m, plan);
  place_slots (m, plan);
  plan->nut_middle = rw_settle (m, RW_NECK_OFFSET_AT_NUT, rw_plan_middle (plan, 0));
}
