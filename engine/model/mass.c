#include "mass.h"

#include "plan.h"
#include "profile.h"
#include "string_load.h"

/* As bought; from memory. */
#define TUNER_G 40.0      /* planetary peg with its button */
#define SHORT_PEG_G 28.0  /* geared fifth peg */
#define TAILPIECE_G 45.0
#define ROD_FILL 0.55     /* share of its channel that a two-way rod of steel fills */

#define ALUMINIUM_KG_M3 2710.0
#define NICKEL_SILVER_KG_M3 8700.0
#define CROWN_FILL 0.7 /* of its height by its width */
#define TANG_WIDTH 0.5 /* mm */

/* mm3 of a density in kg/m3, in grams. */
static double
grams (double volume, double density)
{
  return volume * density * 1e-6;
}

static double
round_area (double diameter)
{
  return G_PI * diameter * diameter / 4;
}

/* The rim's centre, mm from the nut line. */
static double
pot_centre (const RwResult *result)
{
  return result->side.nut_to_rim + result->used.rim_outer_diameter / 2;
}

/* ---- the pot ---- */

static double
head_grams (const RwResult *result)
{
  const RwDesign *d = &result->used;
  double radius = result->value[RW_HEAD_RADIUS], skirt = G_PI * d->rim_outer_diameter * d->head_collar;
  double film = (G_PI * radius * radius + skirt) * d->head_thickness;
  double round = G_PI * (d->head_nominal + d->head_band);

  if (d->head_material == RW_HEAD_FILM)
    return grams (film, d->head_density) + grams (round * d->head_band * d->head_band, ALUMINIUM_KG_M3);
  return grams (film, d->head_density) + grams (round * round_area (d->head_band), RW_STEEL_KG_M3);
}

static double
hook_grams (const RwResult *result)
{
  const RwDesign *d = &result->used;
  double rod = round_area (d->hooks_rod);
  double nut = (round_area (2 * d->hooks_rod) - rod) * d->hooks_nut_height;

  return grams (rod * result->value[RW_HOOKS_BLANK], RW_STEEL_KG_M3) + grams (nut, RW_BRASS_KG_M3);
}

static double
shoe_grams (const RwDesign *d)
{
  double block = d->shoes_width * (d->shoes_stand_off + d->hooks_rod) - round_area (d->hooks_rod);
  double bolt = round_area (rw_threads[d->shoes_thread].major_mm) * (d->rim_wall + d->shoes_stand_off / 2);

  return grams (block * d->shoes_height, RW_BRASS_KG_M3) + grams (bolt, RW_STEEL_KG_M3);
}

static double
joint_grams (const RwDesign *d)
{
  double across = d->rim_outer_diameter;

  if (d->joint_kind == RW_JOINT_RODS)
    return grams (d->joint_rod_count * round_area (d->joint_rod_diameter) * across, RW_STEEL_KG_M3);
  return grams (d->joint_stick_section * d->joint_stick_section * across, rw_woods[d->neck_wood].density_kg_m3);
}

static void
pot_parts (const RwResult *result, RwMass *parts)
{
  const RwDesign *d = &result->used;
  double centre = pot_centre (result), count = d->hooks_count, hooks = 0;
  double tone = round_area (d->rim_tone_ring_rod) * G_PI * (d->rim_outer_diameter - d->rim_tone_ring_rod);
  double front = d->bridge_offset + d->tailpiece_anchor, tail = d->rim_outer_diameter / 2;

  for (int k = 1; k <= count; k++)
    hooks += result->value[RW_HOOKS_X + k] / count;
  parts[RW_MASS_RIM] = (RwMass){ result->value[RW_RIM_MASS], centre };
  parts[RW_MASS_TONE_ROD] = (RwMass){ grams (tone, RW_BRASS_KG_M3), centre };
  parts[RW_MASS_HEAD] = (RwMass){ head_grams (result), centre };
  parts[RW_MASS_HOOP] = (RwMass){ result->value[RW_HOOP_MASS], centre };
  parts[RW_MASS_HOOKS] = (RwMass){ count * hook_grams (result), centre + hooks };
  parts[RW_MASS_SHOES] = (RwMass){ count * shoe_grams (d), centre + hooks };
  parts[RW_MASS_JOINT] = (RwMass){ joint_grams (d), centre };
  parts[RW_MASS_BRIDGE] = (RwMass){ d->bridge_mass, centre + d->bridge_offset };
  parts[RW_MASS_TAILPIECE] = (RwMass){ TAILPIECE_G, centre + (front + tail) / 2 };
}

/* ---- the neck ---- */

/* Something that runs along the neck: its section at x is area (bar, x). */
typedef struct Bar Bar;
struct Bar
{
  const RwResult *result;
  double (*area) (const Bar *bar, double x);
  double carved; /* share of width by depth that the carved back fills */
};

/* Of 1 mm thickness. */
static double
board_area (const Bar *bar, double x)
{
  return rw_plan_width (&bar->result->plan, x);
}

/* Wood under the board.  From the heel's start to the rim its depth grows with the square of the way to the full
 * heel, and the section goes over evenly from the carved back to the tapered block at the rim. */
static double
wood_area (const Bar *bar, double x)
{
  const RwResult *result = bar->result;
  const RwDesign *d = &result->used;
  double start = result->side.heel_start, width = rw_plan_width (&result->plan, x), filled = bar->carved;
  double depth = rw_neck_thickness (result, MIN (x, start)) - d->fretboard_thickness;

  if (x > start)
    {
      double way = (x - start) / (result->side.nut_to_rim - start);
      double block = (1 + d->joint_heel_cap_width / width) / 2;

      depth += way * way * (d->joint_heel_depth - d->fretboard_thickness - depth);
      filled += way * (block - filled);
    }
  return width * depth * filled;
}

/* From the nut line to the end.  The section bends at both ends of the ramp of the board's edge, and once
 * more. */
static RwMass
bar_along (const Bar *bar, double bend, double end, double density)
{
  const RwPlan *plan = &bar->result->plan;
  double from = plan->has_short ? CLAMP (plan->shoulder_from, 0, end) : 0;
  double to = plan->has_short ? CLAMP (plan->shoulder_to, 0, end) : 0;
  double places[] = { 0, from, to, MAX (to, bend), end };
  double volume = 0, moment = 0;

  for (guint i = 0; i + 1 < G_N_ELEMENTS (places); i++)
    {
      double middle = (places[i] + places[i + 1]) / 2, half = (places[i + 1] - places[i]) / 2;

      for (int k = 0; k < 4; k++)
        {
          double x = middle + half * rw_gauss_node[k], slice = half * rw_gauss_weight[k] * bar->area (bar, x);

          volume += slice;
          moment += slice * x;
        }
    }
  return (RwMass){ grams (volume, density), moment / volume };
}

/* The two together as one, with the sign of the masses. */
static RwMass
joined (RwMass one, RwMass other)
{
  double sum = one.grams + other.grams;

  return (RwMass){ sum, sum != 0 ? (one.grams * one.x + other.grams * other.x) / sum : one.x };
}

/* The channel is taken out of the wood, and the rod put into it. */
static void
truss_rod (const RwResult *result, RwMass *parts)
{
  const RwDesign *d = &result->used;
  double from = MAX (d->neck_rod_start, 0);
  double to = MIN (result->side.nut_to_rim - d->neck_rod_end, result->side.heel_start);
  double volume = d->neck_rod_width * d->neck_rod_depth * (to - from), middle = (from + to) / 2;

  parts[RW_MASS_TRUSS_ROD] = (RwMass){ 0, 0 };
  if (d->neck_rod_present != RW_YES || !(to > from))
    return;
  parts[RW_MASS_TRUSS_ROD] = (RwMass){ grams (volume * ROD_FILL, RW_STEEL_KG_M3), middle };
  RwMass channel = { -grams (volume, rw_woods[d->neck_wood].density_kg_m3), middle };
  parts[RW_MASS_NECK] = joined (parts[RW_MASS_NECK], channel);
}

static RwMass
fret_wire (const RwResult *result)
{
  const RwDesign *d = &result->used;
  double section = CROWN_FILL * d->frets_crown_height * d->frets_crown_width + TANG_WIDTH * d->frets_tang_depth;
  RwMass wire = { 0, 0 };

  for (int n = 1; n <= d->frets_count; n++)
    {
      double volume = section * result->value[RW_FRETS_LENGTH + n];
      RwMass fret = { grams (volume, NICKEL_SILVER_KG_M3), result->plan.fret_x[n] };

      wire = joined (wire, fret);
    }
  return wire;
}

/* A trapezium from the nut's width to its own, tilted back; the overlay is of the board's wood. */
static RwMass
headstock (const RwResult *result)
{
  const RwDesign *d = &result->used;
  double near = d->nut_width, far = d->headstock_width, length = d->headstock_length;
  double thick = grams (d->headstock_thickness - d->headstock_overlay, rw_woods[d->neck_wood].density_kg_m3)
                 + grams (d->headstock_overlay, rw_woods[d->neck_board_wood].density_kg_m3);
  double middle = length * (near + 2 * far) / (near + far) / 3;

  return (RwMass){ thick * length * (near + far) / 2,
                   -d->nut_thickness - middle * cos (d->headstock_angle * RW_RAD) };
}

static RwMass
tuners (const RwResult *result)
{
  const RwDesign *d = &result->used;
  RwMass all = { 0, 0 };

  for (int i = 1; i <= result->plan.strings; i++)
    {
      double along = result->value[RW_HEADSTOCK_POST_X + i];
      RwMass post = { TUNER_G, -d->nut_thickness - along * cos (d->headstock_angle * RW_RAD) };

      if (i > result->plan.full && d->fifth_route == RW_ROUTE_SIDE_PEG)
        post = (RwMass){ SHORT_PEG_G, result->plan.short_x - d->fifth_peg_distance };
      all = joined (all, post);
    }
  return all;
}

static RwMass
strings (const RwResult *result)
{
  const RwStringSet *set = &result->used.strings_set;
  RwMass all = { 0, 0 };

  for (int i = 1; i <= set->count; i++)
    {
      double from = i > result->plan.full ? result->plan.short_x : 0;
      double to = result->plan.length + result->used.tailpiece_anchor;
      RwMass wire = { rw_string_mass (&set->at[i - 1]) * (to - from), (from + to) / 2 }; /* kg/m are g/mm */

      all = joined (all, wire);
    }
  return all;
}

void
rw_masses (const RwResult *result, RwMass parts[RW_MASS_COUNT])
{
  const RwDesign *d = &result->used;
  const Bar wood = { result, wood_area, rw_profile_quadrant (d->neck_section).area };
  const Bar board = { result, board_area, 1 };
  double neck = rw_woods[d->neck_wood].density_kg_m3, top = rw_woods[d->neck_board_wood].density_kg_m3;

  pot_parts (result, parts);
  parts[RW_MASS_NECK] = bar_along (&wood, result->side.heel_start, result->side.nut_to_rim, neck);
  parts[RW_MASS_BOARD] = bar_along (&board, 0, result->value[RW_NECK_BOARD_LENGTH],
                                    top * d->fretboard_thickness);
  parts[RW_MASS_FRETS] = fret_wire (result);
  truss_rod (result, parts);
  parts[RW_MASS_HEADSTOCK] = headstock (result);
  parts[RW_MASS_TUNERS] = tuners (result);
  parts[RW_MASS_STRINGS] = strings (result);
}

/* The sum of the parts from first to last, and where it balances. */
static RwMass
sum_of (const RwMass parts[RW_MASS_COUNT], RwMassPart first, RwMassPart last)
{
  RwMass sum = { 0, 0 };

  for (int i = (int) first; i <= (int) last; i++)
    sum = joined (sum, parts[i]);
  return sum;
}

void
rw_model_mass (RwModel *m)
{
  RwMass parts[RW_MASS_COUNT];

  rw_masses (m->r, parts);
  rw_settle (m, RW_WEIGHT_POT, sum_of (parts, RW_MASS_RIM, RW_MASS_POT_LAST).grams);
  rw_settle (m, RW_WEIGHT_NECK, sum_of (parts, RW_MASS_NECK, RW_MASS_NECK_LAST).grams);
  RwMass whole = sum_of (parts, RW_MASS_RIM, RW_MASS_STRINGS);
  rw_settle (m, RW_WEIGHT_TOTAL, whole.grams);
  rw_settle (m, RW_WEIGHT_BALANCE, whole.x);
}
