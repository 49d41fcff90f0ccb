#include "backwards.h"

#include <math.h>

#define LEAST_ANGLE (-3.0)
#define MOST_ANGLE 10.0
#define HALVINGS 44 /* of 13 degrees: 1e-12 */

/* ---- what was measured ---- */

static gboolean
is_height (RwSlot slot)
{
  return slot == RW_STRINGS_OVER_HOOP || (slot >= RW_SETUP_ACTION && slot <= RW_SETUP_ACTION_LAST);
}

/* The measured height to go by, or -1. */
static int
find_height (const RwProject *project, double *measured)
{
  const RwSlot wanted = RW_SETUP_ACTION + (RwSlot) project->design.setup_action_fret;
  int found = -1;

  for (guint i = 0; i < project->ledger->entries->len; i++)
    {
      const RwEntry *entry = g_ptr_array_index (project->ledger->entries, i);
      gboolean is_action = rw_param_find (entry->id) == RW_P_setup_action;
      int slot = is_action ? (int) wanted : rw_slot_find (entry->id);

      if (slot < 0 || !is_height ((RwSlot) slot) || found == (int) wanted)
        continue;
      if (slot == (int) wanted || slot > found)
        {
          found = slot;
          *measured = rw_entry_mean (entry);
        }
    }
  return found;
}

/* ---- the build with an angle and a bridge of our choice ---- */

typedef struct
{
  RwDesign   design;
  RwMeasured facts; /* without the heights of the strings */
  RwResult   result;
} Bench;

static void
set_fact (Bench *bench, RwParamId param, RwSlot slot, double value)
{
  bench->facts.param[param] = value;
  bench->facts.slot[slot] = value;
  bench->facts.holds_param[param] = bench->facts.holds_slot[slot] = FALSE;
}

static void
forget_heights (Bench *bench)
{
  bench->facts.param[RW_P_setup_action] = NAN;
  for (RwSlot slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (is_height (slot))
      bench->facts.slot[slot] = NAN;
}

static double
solve_for (Bench *bench, int unknown, RwSlot slot)
{
  bench->design.neck_solve_for = unknown;
  rw_solve (&bench->design, &bench->facts, &bench->result);
  return bench->result.value[slot];
}

static double
height_at (Bench *bench, RwSlot slot, double angle)
{
  set_fact (bench, RW_P_neck_angle, RW_NECK_ANGLE, angle);
  return solve_for (bench, RW_SOLVE_ACTION, slot);
}

/* The angle that gives a height: more angle, lower strings.  NaN where none does. */
static double
find_angle (Bench *bench, RwSlot slot, double height)
{
  double low = LEAST_ANGLE, high = MOST_ANGLE;

  if (!(height_at (bench, slot, low) >= height) || !(height_at (bench, slot, high) <= height))
    return NAN;
  for (int i = 0; i < HALVINGS; i++)
    {
      double middle = (low + high) / 2;

      if (height_at (bench, slot, middle) >= height)
        low = middle;
      else
        high = middle;
    }
  return (low + high) / 2;
}

gboolean
rw_backwards (const RwProject *project, RwBackwards *backwards)
{
  g_autofree Bench *bench = g_new (Bench, 1);
  double measured = NAN, heel;
  int slot = find_height (project, &measured);

  if (slot < 0)
    return FALSE;
  bench->design = project->design;
  rw_project_measured (project, &bench->facts);
  forget_heights (bench);
  *backwards = (RwBackwards){ .slot = (RwSlot) slot, .measured = measured };

  backwards->bridge = solve_for (bench, project->design.neck_solve_for, RW_BRIDGE_HEIGHT);
  heel = bench->result.used.joint_heel_depth;
  set_fact (bench, RW_P_bridge_height, RW_BRIDGE_HEIGHT, backwards->bridge);
  backwards->angle = find_angle (bench, (RwSlot) slot, measured);
  if (!isfinite (backwards->bridge) || !isfinite (backwards->angle))
    return FALSE;

  set_fact (bench, RW_P_neck_angle, RW_NECK_ANGLE, NAN);
  backwards->wanted_angle = solve_for (bench, RW_SOLVE_ANGLE, RW_NECK_ANGLE);
  set_fact (bench, RW_P_bridge_height, RW_BRIDGE_HEIGHT, NAN);
  set_fact (bench, RW_P_neck_angle, RW_NECK_ANGLE, backwards->angle);
  backwards->wanted_bridge = solve_for (bench, RW_SOLVE_BRIDGE, RW_BRIDGE_HEIGHT);
  backwards->shim = heel * tan ((backwards->wanted_angle - backwards->angle) * G_PI / 180);
  return TRUE;
}
