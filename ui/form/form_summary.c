#include "form_summary.h"

#include <glib/gi18n.h>

#include "base/words.h"

/* What a summary is made from. */
typedef struct
{
  const RwDesign *design;
  const RwResult *result;
  RwStyle         style;
} Build;

typedef char *(*Summary) (const Build *build);

static char *
value (const Build *build, RwParamId id)
{
  return rw_value_words (build->design, id, build->style);
}

static char *
join (const char *a, const char *b)
{
  return g_strconcat (a, ", ", b, NULL);
}

static char *
handed (const Build *build)
{
  return value (build, RW_P_build_handed);
}

static char *
scale (const Build *build)
{
  g_autofree char *length = value (build, RW_P_scale_length);
  int count = (int) build->design->frets_count;
  g_autofree char *frets = count > 0 ? g_strdup_printf (ngettext ("%d fret", "%d frets", count), count)
                                     : g_strdup (_("fretless"));

  return join (length, frets);
}

static char *
nut (const Build *build)
{
  const RwStringSet *set = &build->design->strings_set;
  int number = set->count;
  g_autofree char *width = value (build, RW_P_nut_width);
  g_autofree char *strings = g_strdup_printf (ngettext ("%d string", "%d strings", number), number);
  g_autofree char *both = join (width, strings);

  if (set->count == 0 || !set->at[set->count - 1].is_short)
    return g_steal_pointer (&both);
  return g_strdup_printf (_("%s, short one from fret %d"), both, (int) build->design->fifth_start_fret);
}

static char *
neck (const Build *build)
{
  double angle = build->result->value[RW_NECK_ANGLE];
  g_autofree char *first = rw_value_bare (build->design, RW_P_neck_thickness_first, build->style);
  g_autofree char *last = value (build, RW_P_neck_thickness_last);
  g_autofree char *thick = g_strdup_printf (_("%s to %s thick"), first, last);
  g_autofree char *tilt = NULL;

  if (angle != angle)
    return g_steal_pointer (&thick);
  tilt = rw_number_words (angle, "deg", build->style);
  return g_strdup_printf (_("%s back, %s"), tilt, thick);
}

static char *
headstock (const Build *build)
{
  g_autofree char *angle = value (build, RW_P_headstock_angle);
  g_autofree char *length = rw_value_bare (build->design, RW_P_headstock_length, build->style);
  g_autofree char *width = value (build, RW_P_headstock_width);

  return g_strdup_printf (_("%s, %s × %s"), angle, length, width);
}

static char *
plies_words (double worked_out)
{
  int count = worked_out == worked_out ? (int) worked_out : 0;

  return count > 0 ? g_strdup_printf (ngettext ("%d ply", "%d plies", count), count)
                   : g_strdup (_("bent plies"));
}

static char *
rim (const Build *build)
{
  const RwDesign *design = build->design;
  g_autofree char *size = value (build, RW_P_rim_outer_diameter);
  int segments = (int) design->rim_segments, layers = design->rim_course_thickness.count;
  g_autofree char *parts = NULL, *courses = NULL, *both = NULL;

  if (design->rim_construction == RW_RIM_STAVES)
    parts = g_strdup_printf (ngettext ("%d stave", "%d staves", segments), segments);
  else if (design->rim_construction == RW_RIM_PLIES)
    parts = plies_words (build->result->value[RW_RIM_PLY_COUNT]);
  else
    parts = g_strdup_printf (ngettext ("%d segment", "%d segments", segments), segments);

  both = join (size, parts);
  if (design->rim_construction != RW_RIM_SEGMENTS)
    return g_steal_pointer (&both);
  courses = g_strdup_printf (ngettext ("%d course", "%d courses", layers), layers);
  return join (both, courses);
}

static char *
head (const Build *build)
{
  g_autofree char *size = value (build, RW_P_head_nominal);
  g_autofree char *tension = rw_number_words (build->result->value[RW_HEAD_TENSION], "N/m", build->style);

  return join (size, tension);
}

static char *
hoop (const Build *build)
{
  g_autofree char *thickness = rw_value_bare (build->design, RW_P_hoop_thickness, build->style);
  g_autofree char *height = value (build, RW_P_hoop_height);
  g_autofree char *metal = value (build, RW_P_hoop_material);

  return g_strdup_printf (_("%s, %s × %s"), metal, thickness, height);
}

static char *
hooks (const Build *build)
{
  int number = (int) build->design->hooks_count;
  g_autofree char *count = g_strdup_printf (ngettext ("%d hook", "%d hooks", number), number);
  g_autofree char *rod = value (build, RW_P_hooks_rod);

  return g_strdup_printf (_("%s, rod %s"), count, rod);
}

static char *
joint (const Build *build)
{
  const RwDesign *design = build->design;
  int number = (int) design->joint_rod_count;
  g_autofree char *size = NULL, *rods = NULL;

  if (design->joint_kind == RW_JOINT_STICK)
    {
      size = value (build, RW_P_joint_stick_section);
      return g_strdup_printf (_("Stick, %s square"), size);
    }
  size = value (build, RW_P_joint_rod_diameter);
  rods = g_strdup_printf (ngettext ("%d rod", "%d rods", number), number);
  return join (rods, size);
}

static char *
bridge (const Build *build)
{
  gboolean given = build->design->neck_solve_for != RW_SOLVE_BRIDGE;
  double height = build->result->value[RW_BRIDGE_HEIGHT];
  g_autofree char *offset = value (build, RW_P_bridge_offset);
  g_autofree char *tall = NULL;

  if (height != height)
    return g_strdup_printf (_("%s past the centre"), offset);
  tall = given ? value (build, RW_P_bridge_height) : rw_number_words (height, "mm", build->style);
  return g_strdup_printf (_("%s high, %s past the centre"), tall, offset);
}

static char *
set_up (const Build *build)
{
  double action = build->result->side.action;
  g_autofree char *shown = NULL;

  if (action != action)
    return g_strdup (_("Can’t be worked out"));
  shown = rw_number_words (action, "mm", build->style);
  return g_strdup_printf (_("%s at fret %d"), shown, (int) build->design->setup_action_fret);
}

static char *
shop (const Build *build)
{
  g_autofree char *kerf = value (build, RW_P_shop_kerf);

  return g_strdup_printf (_("Kerf %s"), kerf);
}

static char *
stock (const Build *build)
{
  g_autofree char *kerf = value (build, RW_P_stock_rip_kerf), *planing = value (build, RW_P_stock_planing);

  return g_strdup_printf (_("Ripping kerf %s, %s for planing"), kerf, planing);
}

/* How many numbers of a group the maker has moved; as_given where there are none. */
static char *
moved (const Build *build, RwParamId first, const char *as_given)
{
  int count = 0;

  for (int id = first; id < RW_PARAM_COUNT && rw_param ((RwParamId) id)->group == rw_param (first)->group; id++)
    {
      double given = g_ascii_strtod (rw_param ((RwParamId) id)->initial, NULL);

      count += rw_design_get (build->design, (RwParamId) id) != given ? 1 : 0;
    }
  return count == 0 ? g_strdup (as_given) : g_strdup_printf (ngettext ("%d moved", "%d moved", count), count);
}

static char *
close_enough (const Build *build)
{
  return moved (build, RW_P_tolerance_action, _("what results may be off by, as given"));
}

static char *
care (const Build *build)
{
  return moved (build, RW_P_scatter_mitre, _("what each operation holds, as given"));
}

static char *
limits (const Build *build)
{
  return moved (build, RW_P_limits_rim_wall, _("where checks speak, as given"));
}

static const struct
{
  RwParamId member; /* a parameter that tells the group */
  Summary   summary;
} summaries[] = {
  { RW_P_build_handed, handed },
  { RW_P_scale_length, scale },
  { RW_P_nut_width, nut },
  { RW_P_neck_angle, neck },
  { RW_P_headstock_angle, headstock },
  { RW_P_rim_outer_diameter, rim },
  { RW_P_head_nominal, head },
  { RW_P_hoop_thickness, hoop },
  { RW_P_hooks_count, hooks },
  { RW_P_joint_kind, joint },
  { RW_P_bridge_height, bridge },
  { RW_P_setup_action, set_up },
  { RW_P_shop_kerf, shop },
  { RW_P_stock_rip_kerf, stock },
  { RW_P_tolerance_action, close_enough },
  { RW_P_scatter_mitre, care },
  { RW_P_limits_rim_wall, limits },
};

char *
rw_form_summary (RwParamId first, const RwResult *result, RwStyle style)
{
  Build build = { &result->used, result, style };

  for (guint i = 0; i < G_N_ELEMENTS (summaries); i++)
    if (rw_param (summaries[i].member)->group == rw_param (first)->group)
      return summaries[i].summary (&build);
  return g_strdup ("");
}
