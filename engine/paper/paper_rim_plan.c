#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The turned rim from the head side, to set marks by and to check the finished ring on: faces, bearing
 * circle, hooks with their angles, heel, tail and bridge.  Pot frame. */

static double
outer_radius (const RwDraft *draft)
{
  return draft->design->rim_outer_diameter / 2;
}

static void
draw_circles (RwDraft *draft)
{
  double hoop = rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2,
         bearing = rw_draft_value (draft, RW_HEAD_RADIUS);
  double inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2;

  rw_draft_slot (draft, HOOP, RW_HOOP_OUTER_DIAMETER);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_PHANTOM, RW_TINT_NONE, 0, 0, hoop),
           N_ ("Outside of the tension hoop"), 0);
  rw_draft_param (draft, RIM, rim_outer_diameter);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, 0, 0, outer_radius (draft)),
           N_ ("Rim outside"), 0);
  rw_draft_slot (draft, RIM, RW_RIM_INNER_DIAMETER);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, 0, 0, inner), N_ ("Rim inside"), 0);
  rw_draft_slot (draft, HEAD, RW_HEAD_RADIUS);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_CENTRE, RW_TINT_NONE, 0, 0, bearing), N_ ("Bearing circle"),
           0);
}

/* ---- hooks ---- */

static void
draw_shoe (RwDraft *draft, double angle, int hook)
{
  const RwDesign *design = draft->design;
  double half = design->shoes_width / 2, near = outer_radius (draft),
         far = rw_hook_place (draft->result).shoe_radius;
  const RwPoint corners[] = { rw_place_round (angle, near, -half), rw_place_round (angle, far, -half),
                              rw_place_round (angle, far, half), rw_place_round (angle, near, half) };

  rw_draft_param (draft, HOOKS, shoes_width);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE, corners, G_N_ELEMENTS (corners)),
           N_ ("Shoe"), hook);
}

static void
draw_hook (RwDraft *draft, int hook)
{
  double degrees = rw_draft_value (draft, RW_HOOKS_ANGLE + hook), angle = degrees * G_PI / 180;
  double inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2,
         leg = rw_hook_place (draft->result).foot_radius;
  RwPoint face = { rw_draft_value (draft, RW_HOOKS_X + hook), rw_draft_value (draft, RW_HOOKS_Y + hook) };
  RwPoint in = rw_place_round (angle, inner - 6, 0), axis = rw_place_round (angle, leg, 0);
  RwPoint number_at = rw_place_round (angle, inner - 12, 0),
          figure_at = rw_place_round (angle, inner - 23, 0);
  g_autofree char *number = g_strdup_printf ("%d", hook), *figure = rw_paper_degrees (draft, degrees);

  draw_shoe (draft, angle, hook);
  rw_draft_slot (draft, HOOKS, RW_HOOKS_ANGLE + hook);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, in.x, in.y, axis.x, axis.y), N_ ("Axis of shoe bolt"),
           hook);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL, face.x, face.y, 0.8), N_ ("Shoe hole"),
           hook);
  rw_sheet_circle (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL, axis.x, axis.y, draft->design->hooks_rod / 2);
  rw_draft_slot (draft, TEXT, RW_HOOKS_ANGLE + hook);
  rw_sheet_text (draft->sheet, number_at.x, number_at.y - 1.75, RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, number);
  rw_sheet_text (draft->sheet, figure_at.x, figure_at.y - 1.25, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL, figure);
}

/* ---- heel, tail, bridge ---- */

#define HEEL_SHOWN 16.0

static void
draw_heel (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  double face = draft->result->side.nut_to_rim, r = outer_radius (draft);
  const double edges[]
      = { rw_plan_bass (plan, face), rw_plan_treble (plan, face), rw_plan_centre (plan, face) };

  rw_draft_slot (draft, JOINT, RW_JOINT_HEEL_WIDTH);
  for (guint i = 0; i < G_N_ELEMENTS (edges); i++)
    {
      double x = -sqrt (r * r - edges[i] * edges[i]);

      rw_name (rw_sheet_line (draft->sheet, i == 2 ? RW_PEN_CENTRE : RW_PEN_PHANTOM, x, edges[i],
                              -r - HEEL_SHOWN, edges[i]),
               i == 2 ? N_ ("Centre of the heel") : N_ ("Edge of the heel"), 0);
    }
  rw_paper_words (draft, (RwPoint){ -r - HEEL_SHOWN + 4, edges[1] + 1.5 }, _("heel"));
}

static void
draw_tail (RwDraft *draft)
{
  double r = outer_radius (draft), half = draft->design->tailpiece_width / 2, x = sqrt (r * r - half * half);

  rw_draft_param (draft, STRINGS, tailpiece_width);
  for (int side = -1; side <= 1; side += 2)
    rw_name (rw_sheet_line (draft->sheet, RW_PEN_PHANTOM, x - 8, side * half, r + HEEL_SHOWN, side * half),
             N_ ("Edge of the tailpiece"), 0);
  rw_paper_words (draft, (RwPoint){ r + HEEL_SHOWN - 6, half + 1.5 }, _("tailpiece"));
}

static void
draw_bridge (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  int feet = design->bridge_feet > 2.5 ? 3 : 2;
  double tilt = rw_draft_value (draft, RW_BRIDGE_LINE_ANGLE) * G_PI / 180, x = design->bridge_offset;
  double reach = design->bridge_foot_spread / 2 + design->bridge_foot_length;

  rw_draft_param (draft, BRIDGE, bridge_offset);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_EDGE, x + tan (tilt) * reach, -reach, x - tan (tilt) * reach,
                          reach),
           N_ ("Theoretical bridge line"), 0);
  for (int i = 0; i < feet; i++)
    {
      double y = design->bridge_foot_spread * ((double)i / (feet - 1) - 0.5),
             half = design->bridge_foot_length / 2;

      rw_sheet_box (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE, x - design->bridge_foot_width / 2, y - half,
                    x + design->bridge_foot_width / 2, y + half);
    }
  rw_span_param (draft, RW_P_bridge_offset,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { 0, -reach }, { x, -reach }, -8, 1, NULL });
}

/* Words and figures stand within the ring, so that it takes no more pages than it must. */
#define PAST_HOOKS 5.0
#define WORDS_IN 52.0

static void
draw_axes (RwDraft *draft)
{
  double reach = rw_pot_reach (draft->result) + PAST_HOOKS;

  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, -reach, 0, reach, 0), N_ ("Axis of the strings"), 0);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, 0, -reach, 0, reach), N_ ("Cross axis"), 0);
}

/* Between two hooks, where nothing is in the way: as near as can be to an angle. */
static double
clear_angle (const RwDraft *draft, double wanted)
{
  double best = wanted, least = HUGE_VAL;

  for (int k = 1; k < (int)draft->design->hooks_count; k++)
    {
      double between = (rw_draft_value (draft, RW_HOOKS_ANGLE + k) + rw_draft_value (draft, RW_HOOKS_ANGLE + k + 1))
                       / 2 * G_PI / 180;

      if (fabs (between - wanted) < least)
        {
          least = fabs (between - wanted);
          best = between;
        }
    }
  return best;
}

/* The words stand about half way to the middle, each in a quarter of its own. */
static RwNote
note_in_quarter (const RwDraft *draft, double quarter, double radius)
{
  double inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2, angle = clear_angle (draft, quarter);

  return (RwNote){ rw_place_round (angle, radius, 0), rw_place_round (angle, inner * 0.52, 0), 1, RW_DIAMETER };
}

static void
draw_sizes (RwDraft *draft)
{
  RwNote bearing = note_in_quarter (draft, 0.27 * G_PI, rw_draft_value (draft, RW_HEAD_RADIUS));
  g_autofree char *radius = rw_paper_length (draft, rw_draft_value (draft, RW_HEAD_RADIUS), 1);
  g_autofree char *words = g_strdup_printf (_("bearing circle, R %s"), radius);

  rw_note_param (draft, RW_P_rim_outer_diameter, note_in_quarter (draft, 0.73 * G_PI, outer_radius (draft)));
  rw_note_slot (draft, RW_RIM_INNER_DIAMETER,
                note_in_quarter (draft, 1.27 * G_PI, rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2));
  rw_draft_slot (draft, DIMENSIONS, RW_HEAD_RADIUS);
  rw_sheet_leader (draft->sheet, bearing.arrow, bearing.text, RW_FIGURE_WORKED_OUT, words);
}

static void
draw_sides (RwDraft *draft)
{
  double inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2, in = inner - WORDS_IN,
         beside = fmin (34, inner * 0.28);

  rw_paper_side (draft, (RwPoint){ -in, 3 }, 0, _("neck"));
  rw_paper_side (draft, (RwPoint){ in, 3 }, 0, _("tail"));
  rw_paper_side (draft, (RwPoint){ beside, in }, 0, _("treble"));
  rw_paper_side (draft, (RwPoint){ beside, -in }, 0, _("bass"));
}

#define NOTES_WIDE 78.0
#define NOTES_ROOM 118.0 /* inside radius that takes them */

static void
write_notes (RwDraft *draft)
{
  double inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2;
  RwPoint at = inner > NOTES_ROOM ? (RwPoint){ -NOTES_WIDE - 4, -16 } : rw_paper_under (draft);
  double wide = inner > NOTES_ROOM ? NOTES_WIDE : 2 * NOTES_WIDE;

  rw_paper_line_within (
      draft, &at, wide,
      _("Head side up. Hooks are counted from the neck towards the treble side; their angles run "
         "from the neck's centre line."));
  rw_paper_line_within (draft, &at, wide,
                        _("The circles are the wood's outside and inside, the bearing circle, and the hoop's "
                          "outside."));
}

RwSheet *
rw_paper_rim_plan (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Rim plan"));

  draw_circles (&draft);
  for (int k = 1; k <= (int)draft.design->hooks_count; k++)
    draw_hook (&draft, k);
  draw_heel (&draft);
  draw_tail (&draft);
  draw_bridge (&draft);
  draw_axes (&draft);
  draw_sizes (&draft);
  draw_sides (&draft);
  rw_paper_mirror_across (&draft);
  write_notes (&draft);
  return rw_paper_end (&draft);
}
