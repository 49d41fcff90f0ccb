/* Remedies that are more than one number moved. */
#include <math.h>
#include <string.h>

#include "table/material.h"
#include "table/named_set.h"
#include "remedy_cures.h"

static gboolean
say (RwRemedy *remedy, RwParamId param, const char *pattern)
{
  remedy->param = param;
  remedy->pattern = pattern;
  remedy->value_count = 0;
  return TRUE;
}

static gboolean
say_number (RwRemedy *remedy, RwParamId param, const char *pattern, double value)
{
  say (remedy, param, pattern);
  remedy->values[0] = value;
  remedy->value_count = 1;
  return TRUE;
}

/* ---- courses ---- */

#define THICKNESS_STEP 0.5
#define MANY_THICKNESSES 60
#define FAR_GLUE_LINE 8 /* mm */

static double
stack_height (const RwLengthList *courses)
{
  double height = 0;

  for (int k = 0; k < courses->count; k++)
    height += courses->at[k];
  return height;
}

/* As thick as the last, or what is missing and a little over. */
static gboolean
one_more_course (RwRemedy *remedy, int attempt)
{
  RwLengthList *courses = &remedy->design.rim_course_thickness;
  RwWoodList *woods = &remedy->design.rim_course_wood;
  double missing = remedy->design.rim_height + remedy->design.limits_facing - stack_height (courses);
  double thick = ceil (missing / THICKNESS_STEP) * THICKNESS_STEP;

  if (attempt > 0 || courses->count >= RW_COURSES_MAX || courses->count != woods->count)
    return FALSE;
  courses->at[courses->count++] = CLAMP (thick, RW_COURSE_MIN, RW_COURSE_MAX);
  woods->at[woods->count] = woods->at[woods->count - 1];
  woods->count++;
  return say_number (remedy, RW_P_rim_course_thickness, N_("One more course, {1 mm} thick"),
                     courses->at[courses->count - 1]);
}

static gboolean
thicker_last_course (RwRemedy *remedy, int attempt)
{
  RwLengthList *courses = &remedy->design.rim_course_thickness;
  double *last = &courses->at[courses->count - 1];

  if (attempt >= MANY_THICKNESSES)
    return FALSE;
  *last = fmin (ceil (*last / THICKNESS_STEP) * THICKNESS_STEP + attempt * THICKNESS_STEP, RW_COURSE_MAX);
  return say_number (remedy, RW_P_rim_course_thickness, N_("Last course {1 mm} thick"), *last);
}

static gboolean
one_course_less (RwRemedy *remedy, int attempt)
{
  RwLengthList *courses = &remedy->design.rim_course_thickness;
  RwWoodList *woods = &remedy->design.rim_course_wood;

  if (attempt > 0 || courses->count < 2)
    return FALSE;
  courses->count--;
  courses->at[courses->count] = 0;
  if (woods->count > courses->count)
    woods->at[--woods->count] = 0;
  return say_number (remedy, RW_P_rim_course_thickness, N_("Leave the last course out: {1} courses"),
                     courses->count);
}

static gboolean
a_wood_for_each_course (RwRemedy *remedy, int attempt)
{
  RwWoodList *woods = &remedy->design.rim_course_wood;
  int count = remedy->design.rim_course_thickness.count;

  if (attempt > 0)
    return FALSE;
  for (int k = woods->count; k < count; k++)
    woods->at[k] = woods->at[k - 1];
  for (int k = count; k < woods->count; k++)
    woods->at[k] = 0;
  woods->count = count;
  return say_number (remedy, RW_P_rim_course_wood, N_("Name a wood for each of the {1} courses"), count);
}

/* The first glue line moved, the stack staying as high. */
static gboolean
move_first_glue_line (RwRemedy *remedy, int attempt)
{
  RwLengthList *courses = &remedy->design.rim_course_thickness;
  double by = (attempt / 2 + 1.0) * (attempt % 2 == 0 ? 1 : -1);

  if (attempt >= 2 * FAR_GLUE_LINE || courses->count < 2)
    return FALSE;
  courses->at[0] += by;
  courses->at[1] -= by;
  if (fmin (courses->at[0], courses->at[1]) < RW_COURSE_MIN)
    return FALSE;
  say_number (remedy, RW_P_rim_course_thickness, N_("First course {1 mm} thick, the second {2 mm}"),
              courses->at[0]);
  remedy->values[1] = courses->at[1];
  remedy->value_count = 2;
  return TRUE;
}

/* ---- hoop and hooks ---- */

static gboolean
bendable_brass (RwRemedy *remedy, int attempt)
{
  for (int i = 0; attempt == 0 && i < rw_metals_count; i++)
    if (strcmp (rw_metals[i].id, "brass_cartridge_annealed") == 0)
      {
        remedy->design.hoop_material = i;
        return say (remedy, RW_P_hoop_material, N_("Take cartridge brass, annealed"));
      }
  return FALSE;
}

static gboolean
even_sides (RwRemedy *remedy, int attempt)
{
  if (attempt > 0 || remedy->design.hooks_layout == RW_LAYOUT_SIDES)
    return FALSE;
  remedy->design.hooks_layout = RW_LAYOUT_SIDES;
  return say (remedy, RW_P_hooks_layout, N_("Space the hooks along each side, from heel to tail"));
}

static gboolean
other_beginning (RwRemedy *remedy, int attempt)
{
  int *first = &remedy->design.hooks_first;

  if (attempt > 0 || remedy->design.hooks_layout != RW_LAYOUT_EVEN)
    return FALSE;
  *first = *first == RW_FIRST_STRADDLE ? RW_FIRST_NECK_TAKES_ONE : RW_FIRST_STRADDLE;
  return say (remedy, RW_P_hooks_first,
              *first == RW_FIRST_STRADDLE ? N_("Begin half a step each side of the neck")
                                          : N_("Let the neck take the place of one hook"));
}

static gboolean
rod_for_thread (RwRemedy *remedy, int attempt)
{
  double major = rw_threads[remedy->design.hooks_thread].major_mm;

  if (attempt > 0)
    return FALSE;
  remedy->design.hooks_rod = round (major * 20) / 20;
  return say_number (remedy, RW_P_hooks_rod, N_("Rod of {1 mm}, which fits the thread"),
                     remedy->design.hooks_rod);
}

static gboolean
thread_for_rod (RwRemedy *remedy, int attempt)
{
  double rod = remedy->design.hooks_rod, nearest = G_MAXDOUBLE;
  int best = -1;

  for (int i = 0; attempt == 0 && i < rw_threads_count; i++)
    if (fabs (rw_threads[i].major_mm - rod) < nearest)
      {
        nearest = fabs (rw_threads[i].major_mm - rod);
        best = i;
      }
  if (best < 0)
    return FALSE;
  remedy->design.hooks_thread = best;
  g_free (remedy->word);
  remedy->word = g_strdup (rw_threads[best].id);
  return say (remedy, RW_P_hooks_thread, N_("Thread {id}, which fits the rod"));
}

/* The threads in the order of their size, each with the rod that fits. */
static gboolean
next_rod_size (RwRemedy *remedy, int attempt)
{
  double now = rw_threads[remedy->design.hooks_thread].major_mm;
  int next = -1;

  for (int step = 0; step <= attempt; step++)
    {
      next = -1;
      for (int i = 0; i < rw_threads_count; i++)
        if (rw_threads[i].major_mm > now + 1e-6
            && (next < 0 || rw_threads[i].major_mm < rw_threads[next].major_mm))
          next = i;
      if (next < 0)
        return FALSE;
      now = rw_threads[next].major_mm;
    }
  remedy->design.hooks_thread = next;
  remedy->design.hooks_rod = round (now * 20) / 20;
  g_free (remedy->word);
  remedy->word = g_strdup (rw_threads[next].id);
  return say_number (remedy, RW_P_hooks_rod, N_("Next rod size: {1 mm} with a thread {id}"),
                     remedy->design.hooks_rod);
}

/* ---- neck and air ---- */

static gboolean
fit_a_rod (RwRemedy *remedy, int attempt)
{
  if (attempt > 0)
    return FALSE;
  remedy->design.neck_rod_present = RW_YES;
  return say (remedy, RW_P_neck_rod_present, N_("Fit a rod"));
}

static gboolean
ears (RwRemedy *remedy, int attempt)
{
  double over = remedy->design.headstock_width - remedy->design.limits_blank_width;

  if (attempt > 0)
    return FALSE;
  remedy->design.headstock_ears = RW_YES;
  return say_number (remedy, RW_P_headstock_ears, N_("Ears for the headstock, {1 mm} on each side"),
                     (over + remedy->design.neck_blank_allowance) / 2);
}

/* The angle, or the bridge, left to follow from the rest. */
static gboolean
leave_open (RwRemedy *remedy, int attempt)
{
  static const int unknowns[] = { RW_SOLVE_ANGLE, RW_SOLVE_BRIDGE };

  if (attempt >= (int) G_N_ELEMENTS (unknowns))
    return FALSE;
  remedy->design.neck_solve_for = unknowns[attempt];
  return say (remedy, RW_P_neck_solve_for,
              unknowns[attempt] == RW_SOLVE_ANGLE ? N_("Work the neck angle out from the bridge and the action")
                                                  : N_("Work the bridge out from the neck angle and the action"));
}

/* The sets that are sold, of as many strings. */
static gboolean
other_strings (RwRemedy *remedy, int attempt)
{
  int strings = remedy->design.strings_set.count, left = attempt;

  for (int i = 0; i < rw_string_sets_count; i++)
    {
      RwStringSet set;

      rw_string_set_take (&set, i);
      if (set.count != strings || left-- > 0)
        continue;
      remedy->design.strings_set = set;
      g_free (remedy->word);
      remedy->word = g_strdup (rw_string_sets[i].id);
      return say (remedy, RW_P_strings_set, N_("Take another set of strings: {id}"));
    }
  return FALSE;
}

static gboolean
swap_air (RwRemedy *remedy, int attempt)
{
  double low = remedy->design.setup_humidity_low;

  if (attempt > 0)
    return FALSE;
  remedy->design.setup_humidity_low = remedy->design.setup_humidity_high;
  remedy->design.setup_humidity_high = low;
  return say (remedy, RW_P_setup_humidity_low, N_("Swap the two"));
}

const RwSpecialCure rw_special_cures[] = {
  { "side.no_angle", leave_open },
  { "side.no_balance", fit_a_rod },
  { "side.no_balance", other_strings },
  { "side.no_force", leave_open },
  { "side.bridge_under_nut", leave_open },
  { "rim.stack_low", one_more_course },
  { "rim.stack_low", thicker_last_course },
  { "rim.stack_facing", thicker_last_course },
  { "rim.course_unused", one_course_less },
  { "rim.course_lists", a_wood_for_each_course },
  { "rim.hole_to_glue_line", move_first_glue_line },
  { "hoop.cracks", bendable_brass },
  { "hooks.clear_heel", even_sides },
  { "hooks.clear_heel", other_beginning },
  { "hooks.clear_tail", even_sides },
  { "hooks.clear_tail", other_beginning },
  { "hooks.rod_thin", rod_for_thread },
  { "hooks.rod_thin", thread_for_rod },
  { "hooks.rod_thick", thread_for_rod },
  { "hooks.rod_thick", rod_for_thread },
  { "hooks.stress", next_rod_size },
  { "neck.rod_missing", fit_a_rod },
  { "headstock.ears", ears },
  { "move.swapped", swap_air },
};

const int rw_special_cures_count = G_N_ELEMENTS (rw_special_cures);
