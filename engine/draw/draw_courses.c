#include "draw_parts.h"

#include <math.h>

/* Rim courses: the ring of one course over that of the next, the stack from the side, one segment.  Staves
 * are drawn alike, one ring high. */

static double
blank_radius (const RwDraft *draft) /* of the circle that the long edges touch */
{
  return draft->design->rim_outer_diameter / 2 + draft->design->rim_turning_allowance;
}

static double
strip_width (const RwDraft *draft)
{
  double width = draft->design->rim_strip_width;

  return width > 0 ? width : rw_draft_value (draft, RW_RIM_SEGMENT_MIN_WIDTH);
}

static int
segments (const RwDraft *draft)
{
  return (int)draft->design->rim_segments;
}

static double
joint_angle (const RwDraft *draft, int joint, double turn)
{
  return ((joint + 0.5) * 360 / segments (draft) + turn) * G_PI / 180;
}

/* A few strokes along the grain, shorter towards the inside as the segment is. */
#define STROKES 4

static void
draw_grain (RwDraft *draft, int joint, double turn)
{
  double middle = joint_angle (draft, joint, turn) - G_PI / segments (draft);

  rw_path_begin (draft->sheet, RW_PEN_GRAIN, RW_TINT_NONE);
  for (int i = 1; i <= STROKES; i++)
    {
      double across = blank_radius (draft) - strip_width (draft) * i / (STROKES + 1);
      double half = across * tan (G_PI / segments (draft)) * (i % 2 != 0 ? 0.62 : 0.8);
      double shift = half * 0.2 * (i % 3 - 1);
      RwPoint from = rw_place_round (middle, across, shift - half),
              to = rw_place_round (middle, across, shift + half);

      rw_path_move (draft->sheet, from.x, from.y);
      rw_path_line (draft->sheet, to.x, to.y);
    }
  rw_path_end (draft->sheet);
}

static void
draw_segment_in_ring (RwDraft *draft, int joint, double turn)
{
  double slant = cos (G_PI / segments (draft));
  double outer = blank_radius (draft) / slant, inner = (blank_radius (draft) - strip_width (draft)) / slant;
  double from = joint_angle (draft, joint - 1, turn), to = joint_angle (draft, joint, turn);
  const RwPoint corners[] = {
    rw_place_round (from, inner, 0),
    rw_place_round (from, outer, 0),
    rw_place_round (to, outer, 0),
    rw_place_round (to, inner, 0),
  };

  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_LIGHT_WOOD, corners, G_N_ELEMENTS (corners)),
           N_ ("Segment"), joint + 1);
}

/* Joints of the course underneath. */
static void
draw_joint_below (RwDraft *draft, int joint, double turn)
{
  double slant = cos (G_PI / segments (draft));
  RwPoint from = rw_place_round (joint_angle (draft, joint, turn),
                                 (blank_radius (draft) - strip_width (draft)) / slant, 0);
  RwPoint to = rw_place_round (joint_angle (draft, joint, turn), blank_radius (draft), 0);

  rw_name (rw_sheet_line (draft->sheet, RW_PEN_HIDDEN, from.x, from.y, to.x, to.y),
           N_ ("Joint of the next course"), 0);
}

static gboolean
has_next_course (const RwDraft *draft)
{
  return draft->design->rim_construction == RW_RIM_SEGMENTS && draft->design->rim_course_thickness.count > 1;
}

void
rw_draw_ring (RwDraft *draft)
{
  double outer = draft->design->rim_outer_diameter / 2,
         inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2;
  double turn = rw_draft_value (draft, RW_RIM_COURSE_TURN + 2);

  rw_draft_param (draft, RIM, rim_segments);
  for (int j = 0; j < segments (draft); j++)
    {
      draw_segment_in_ring (draft, j, 0);
      draw_grain (draft, j, 0);
    }
  rw_draft_param (draft, RIM, rim_course_turn);
  for (int j = 0; has_next_course (draft) && j < segments (draft); j++)
    draw_joint_below (draft, j, turn);

  rw_draft_param (draft, RIM, rim_outer_diameter);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, 0, 0, outer),
           N_ ("Outside as turned"), 0);
  rw_draft_param (draft, RIM, rim_wall);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, 0, 0, inner), N_ ("Inside as turned"),
           0);
}

static double
corner_radius (const RwDraft *draft)
{
  return rw_draft_value (draft, RW_RIM_CORNER_DIAMETER) / 2;
}

static void
ring_sizes (RwDraft *draft)
{
  double outer = draft->design->rim_outer_diameter / 2,
         inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2;
  double turn = rw_draft_value (draft, RW_RIM_COURSE_TURN + 2) * G_PI / 180;
  RwPoint at = rw_place_round (1.2 * G_PI, outer, 0), in = rw_place_round (0.2 * G_PI, inner, 0);
  RwPoint corner = rw_place_round (joint_angle (draft, segments (draft) * 9 / 10, 0), corner_radius (draft), 0);
  double joint = G_PI - joint_angle (draft, segments (draft) / 4, 0);

  rw_note_param (draft, RW_P_rim_outer_diameter,
                 (RwNote){ at, { at.x + 22, at.y - 26 }, 1, N_ ("outside ⌀ %s") });
  rw_note_slot (draft, RW_RIM_INNER_DIAMETER, (RwNote){ in, { in.x + 30, in.y - 24 }, 2, N_ ("inside ⌀ %s") });
  rw_note_slot (draft, RW_RIM_CORNER_DIAMETER,
                (RwNote){ corner, { corner.x - 24, corner.y - 20 }, 3, N_ ("corners ⌀ %s") });
  if (has_next_course (draft) && turn > 0.01)
    rw_sweep_slot (draft, RW_RIM_COURSE_TURN + 2,
                   (RwSweep){ { 0, 0 }, 0.9 * inner, joint - turn, joint, 2, N_ ("turned %s") });
}

/* ---- the stack from the side ---- */

static void
stack_sizes (RwDraft *draft, double stack_top)
{
  const RwDesign *design = draft->design;
  double radius = design->rim_outer_diameter / 2, top = stack_top;

  for (int k = 1; k <= design->rim_course_thickness.count; k++)
    {
      double foot = top - design->rim_course_thickness.at[k - 1];

      rw_span_course (draft, k,
                      (RwSpan){ RW_MEASURE_VERTICAL, { radius, foot }, { radius, top }, 8, 1, NULL });
      top = foot;
    }
  rw_span_slot (draft, RW_RIM_BLANK_HEIGHT,
                (RwSpan){ RW_MEASURE_VERTICAL, { radius, top }, { radius, stack_top }, 18, 2, NULL });
  rw_span_param (draft, RW_P_rim_height,
                 (RwSpan){ RW_MEASURE_VERTICAL,
                           { -radius, stack_top - design->rim_height },
                           { -radius, stack_top },
                           -8,
                           1,
                           NULL });
}

static void
draw_stack (RwDraft *draft, double top)
{
  const RwDesign *design = draft->design;
  double radius = design->rim_outer_diameter / 2, stack_top = top;

  for (int k = 1; k <= design->rim_course_thickness.count; k++)
    {
      double foot = top - design->rim_course_thickness.at[k - 1];

      rw_draft_param (draft, RIM, rim_course_thickness);
      rw_name (
          rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, rw_course_tint (design, k), -radius, top, radius, foot),
          N_ ("Course"), k);
      rw_draw_joints (draft, rw_draft_value (draft, RW_RIM_COURSE_TURN + k), top, foot);
      top = foot;
    }
  rw_draft_param (draft, RIM, rim_height);
  if (top < stack_top - design->rim_height - 0.05)
    rw_name (rw_sheet_line (draft->sheet, RW_PEN_PHANTOM, -radius - 4, stack_top - design->rim_height,
                            radius + 4, stack_top - design->rim_height),
             N_ ("Cut off here"), 0);
  stack_sizes (draft, stack_top);
}

static void
draw_barrel (RwDraft *draft, double top)
{
  double radius = draft->design->rim_outer_diameter / 2, height = draft->design->rim_height;

  rw_draft_param (draft, RIM, rim_height);
  rw_name (
      rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, -radius, top, radius, top - height),
      N_ ("Rim"), 0);
  rw_draw_joints (draft, 0, top, top - height);
  rw_span_param (draft, RW_P_rim_height,
                 (RwSpan){ RW_MEASURE_VERTICAL, { radius, top - height }, { radius, top }, 8, 1, NULL });
}

static void
draw_axes (RwDraft *draft, double reach, double foot)
{
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, -reach, 0, reach, 0), N_ ("Axis of the strings"), 0);
  rw_sheet_line (draft->sheet, RW_PEN_CENTRE, 0, reach, 0, foot);
}

/* Between ring and stack, and between ring and segment. */
#define GAP 34.0
#define EDGE_BELOW 46.0 /* the segment */
#define BESIDE 70.0

void
rw_draw_courses (RwDraft *draft)
{
  double reach, top;

  if (draft->design->rim_construction == RW_RIM_PLIES)
    {
      rw_draw_plies (draft);
      return;
    }
  reach = corner_radius (draft);
  top = -reach - GAP;
  rw_draw_ring (draft);
  ring_sizes (draft);
  if (draft->design->build_handed == RW_HANDED_LEFT)
    rw_sheet_mirror (draft->sheet, 0);
  if (draft->design->rim_construction == RW_RIM_SEGMENTS)
    draw_stack (draft, top);
  else
    draw_barrel (draft, top);
  draw_axes (draft, reach + 10, top - draft->design->rim_height - 12);
  rw_draw_segment (draft, (RwPoint){ reach + BESIDE, reach * 0.6 }, EDGE_BELOW);
  if (draft->design->rim_construction == RW_RIM_SEGMENTS)
    rw_draw_strip (draft, (RwPoint){ reach + BESIDE, top });
}
