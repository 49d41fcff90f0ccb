#include "draw_parts.h"

#include <math.h>

/* The heel joint: from the side, from above over it, and its face as seen from the pot beside it; the pot
 * itself as a neighbouring part. */

/* Neck shown before the heel's start. */
#define NECK_SHOWN 34.0
/* Rim shown behind its face. */
#define RIM_SHOWN 30.0

static double
rim (const RwDraft *draft)
{
  return draft->design->rim_outer_diameter / 2;
}

static double
hoop (const RwDraft *draft)
{
  return rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2;
}

static double
relief_radius (const RwDraft *draft)
{
  return rim (draft) + fmax (rw_draft_value (draft, RW_JOINT_RELIEF_DEPTH), 0);
}

static double
height_at (const RwDraft *draft, double depth)
{
  return draft->design->neck_set_height - depth;
}

static RwPoint
neck (const RwDraft *draft, double x, double over)
{
  return rw_place_neck (draft->result, x, over);
}

/* ---- from the side ---- */

static void
draw_pot_beside (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double top = -design->rim_tone_ring_height, foot = top - design->rim_height,
         inner = rim (draft) - design->rim_wall;
  double bore = rw_draft_value (draft, RW_HOOP_BORE) / 2;

  rw_draft_param (draft, RIM, rim_outer_diameter);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_PHANTOM, RW_TINT_NONE, -rim (draft), foot, -inner, top),
           N_ ("Rim"), 0);
  if (top < 0)
    rw_sheet_box (draft->sheet, RW_PEN_PHANTOM, RW_TINT_NONE, -rim (draft), top, -inner, 0);
  rw_draft_param (draft, HOOP, hoop_height);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_PHANTOM, RW_TINT_NONE, -hoop (draft),
                         rw_hoop_bottom (draft->result), -bore, rw_hoop_top (draft->result)),
           N_ ("Tension hoop"), 0);
  rw_draft_set (draft, RW_LAYER_HEAD, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_PHANTOM, -rim (draft), 0, -inner + RIM_SHOWN * 0.5, 0),
           N_ ("Head plane"), 0);
}

static void
draw_side (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double cut = draft->result->side.heel_start - NECK_SHOWN,
         end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH);
  double glue = -design->fretboard_thickness;
  RwPoint start = neck (draft, cut, glue);
  RwPoint back = neck (draft, cut, -rw_neck_thickness (draft->result, cut));
  const RwPoint board[] = { start, neck (draft, cut, 0), neck (draft, end, 0), neck (draft, end, glue) };

  rw_draft_param (draft, NECK, joint_heel_depth);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD);
  rw_path_move (draft->sheet, start.x, start.y);
  rw_path_heel (draft);
  rw_path_line (draft->sheet, back.x, back.y);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Heel"), 0);
  rw_draw_shim (draft);
  rw_draft_param (draft, FRETBOARD, fretboard_thickness);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, board, 4), N_ ("Fretboard"), 0);
}

/* The bottom of the hollow and of the relief, on the axis, behind the cheek that shows. */
static void
draw_bottoms (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double under = fmin (rw_draft_value (draft, RW_JOINT_RELIEF_HEIGHT), design->joint_heel_depth);
  const RwPoint points[] = {
    { -relief_radius (draft), height_at (draft, design->fretboard_thickness) },
    { -relief_radius (draft), height_at (draft, under) },
    { -rim (draft) - rw_heel_shim (draft->result, under), height_at (draft, under) },
    { -rim (draft) - rw_heel_shim (draft->result, design->joint_heel_depth),
      height_at (draft, design->joint_heel_depth) },
  };

  rw_draft_slot (draft, NECK, RW_JOINT_HOLLOW);
  rw_name (rw_sheet_polyline (draft->sheet, RW_PEN_HIDDEN, points, G_N_ELEMENTS (points)),
           N_ ("Hollow of the heel"), 0);
}

static void
draw_holes (RwDraft *draft)
{
  RwAcross across = rw_across (draft->design);
  double right = -rim (draft) + draft->design->rim_wall + RIM_SHOWN * 0.4;

  for (int i = 0; i < across.count; i++)
    {
      double axis = -across.below[i];
      double left = -rim (draft) - rw_across_reach (draft->result, i);
      const RwPoint corners[] = { { right, axis - across.half },
                                  { left, axis - across.half },
                                  { left, axis + across.half },
                                  { right, axis + across.half } };

      rw_draft_set (draft, RW_LAYER_JOINT,
                    draft->design->joint_kind == RW_JOINT_STICK
                        ? RW_SUBJECT_SLOT (RW_JOINT_STICK_ON_HEEL)
                        : RW_SUBJECT_SLOT (RW_JOINT_HOLE_ON_HEEL + i + 1));
      rw_name (rw_sheet_polyline (draft->sheet, RW_PEN_HIDDEN, corners, 4), N_ ("Hole in the heel"), i + 1);
      rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
      rw_sheet_line (draft->sheet, RW_PEN_CENTRE, left - 6, axis, right + 6, axis);
    }
}

/* The shim is told under the cap, where its taper can be seen. */
static void
shim_note (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double foot = height_at (draft, design->joint_heel_depth), middle = (foot + height_at (draft, 0)) / 2;
  RwPoint at = { -rim (draft) - rw_heel_shim (draft->result, design->joint_heel_depth / 2) / 2, middle };

  if (fabs (design->joint_shim) > 0)
    rw_note_param (draft, RW_P_joint_shim, (RwNote){ at, { -rim (draft) + 12, foot - 10 }, 2, N_ ("shim %s") });
}

/* The face's angle to the board, told at the rim under the board; the face leaves the rim by the shim. */
static void
side_sizes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  const RwSide *side = &draft->result->side;
  double foot = height_at (draft, design->joint_heel_depth), start = neck (draft, side->heel_start, 0).x;
  RwPoint joint = { -rim (draft), design->neck_set_height };
  RwPoint face = { joint.x - rw_heel_shim (draft->result, 0), joint.y };
  double shim_turn = atan (design->joint_shim / design->joint_heel_depth);
  RwPoint under = neck (draft, side->heel_start, -rw_neck_thickness (draft->result, side->heel_start));

  rw_span_param (draft, RW_P_neck_heel_start,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { start, foot }, { -rim (draft), foot }, -9, 1, NULL });
  rw_lead_out (draft, under, (RwPoint){ start, foot - 2 });
  rw_span_param (draft, RW_P_neck_thickness_last,
                 (RwSpan){ RW_MEASURE_ALIGNED,
                           neck (draft, side->heel_start - NECK_SHOWN,
                                 -rw_neck_thickness (draft->result, side->heel_start - NECK_SHOWN)),
                           neck (draft, side->heel_start - NECK_SHOWN, 0), 7, 3, NULL });
  rw_sweep_slot (draft, RW_JOINT_HEEL_ANGLE,
                 (RwSweep){ face, 26, G_PI + side->angle, 1.5 * G_PI + shim_turn, 1, N_("heel cut %s") });
  shim_note (draft);
  rw_note_param (draft, RW_P_neck_set_height,
                 (RwNote){ joint, { joint.x + 18, joint.y + 13 }, 2, N_ ("set height %s") });
  rw_span_slot (draft, RW_JOINT_RELIEF_DEPTH,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { -relief_radius (draft), joint.y }, joint, 12, 2, NULL });
}

/* ---- from above ---- */

#define PLAN_ROOM 38.0

double
rw_heel_plan_rise (const RwResult *result)
{
  double half = fmax (rw_plan_treble (&result->plan, result->side.nut_to_rim),
                      -rw_plan_bass (&result->plan, result->side.nut_to_rim));

  return half + PLAN_ROOM + fmax (rw_hoop_top (result), result->used.neck_set_height);
}

/* A round face of the pot, as far up and down as the drawing needs. */
static void
draw_arc (RwDraft *draft, double radius, double half, const char *name)
{
  double angle = asin (fmin (half / radius, 1));

  rw_path_begin (draft->sheet, RW_PEN_PHANTOM, RW_TINT_NONE);
  rw_path_arc (draft->sheet, (RwPoint){ 0, 0 }, radius, G_PI - angle, G_PI + angle);
  rw_name (rw_path_end (draft->sheet), name, 0);
}

static void
draw_board_above (RwDraft *draft)
{
  RwPoint ends[2][2];

  rw_place_across (draft->result, draft->result->side.heel_start - NECK_SHOWN, 0, &ends[0][0], &ends[0][1]);
  rw_place_across (draft->result, rw_draft_value (draft, RW_NECK_BOARD_LENGTH), 0, &ends[1][0], &ends[1][1]);
  const RwPoint corners[] = {
    rw_map_plan (draft->result, ends[0][0].x, ends[0][0].y),
    rw_map_plan (draft->result, ends[0][1].x, ends[0][1].y),
    rw_map_plan (draft->result, ends[1][1].x, ends[1][1].y),
    rw_map_plan (draft->result, ends[1][0].x, ends[1][0].y),
  };

  rw_draft_slot (draft, FRETBOARD, RW_NECK_BOARD_LENGTH);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, corners, 4), N_ ("Fretboard"),
           0);
}

/* The cap under it all, and rods or stick on the axis. */
static void
draw_below (RwDraft *draft)
{
  double radius = rim (draft), cap = draft->design->joint_heel_cap_width / 2,
         across = rw_across (draft->design).half;
  RwHeelSweep sweep = rw_heel_sweep (draft->result);
  double face = -sqrt (fmax (radius * radius - cap * cap, 0));
  const RwPoint corners[]
      = { { face, -cap }, { sweep.corner.x, -cap }, { sweep.corner.x, cap }, { face, cap } };

  rw_draft_param (draft, NECK, joint_heel_cap_width);
  rw_name (rw_sheet_polyline (draft->sheet, RW_PEN_HIDDEN, corners, 4), N_ ("Heel cap"), 0);
  rw_draft_set (draft, RW_LAYER_JOINT, RW_SUBJECT_NONE);
  for (int side = -1; side <= 1; side += 2)
    rw_sheet_line (draft->sheet, RW_PEN_HIDDEN, -radius - rw_across_reach (draft->result, 0), side * across,
                   -radius + draft->design->rim_wall + 10, side * across);
}

static void
above_sizes (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  double to_rim = draft->result->side.nut_to_rim, radius = rim (draft);
  double treble = rw_plan_treble (plan, to_rim), bass = rw_plan_bass (plan, to_rim);
  double edge = -sqrt (fmax (radius * radius - treble * treble, 0)),
         right = -radius + draft->design->rim_wall;
  double at = asin (fmin (treble / radius, 1)) * 1.35;
  RwPoint arc = { -radius * cos (at), -radius * sin (at) },
          tip = rw_place_board (draft->result, draft->result->side.heel_start - NECK_SHOWN, 0);

  rw_span_slot (draft, RW_JOINT_HEEL_WIDTH,
                (RwSpan){ RW_MEASURE_VERTICAL, { right, bass }, { right, treble }, 14, 1, NULL });
  rw_span_slot (draft, RW_JOINT_HOLLOW,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { -radius, treble }, { edge, treble }, 8, 2, N_ ("hollow %s") });
  rw_note_param (draft, RW_P_rim_outer_diameter,
                 (RwNote){ arc, { arc.x + 18, arc.y - 6 }, 2, N_ ("rim ⌀ %s") });
  tip = rw_map_plan (draft->result, tip.x - 6, tip.y);
  rw_note_slot (draft, RW_NECK_SIDE_ANGLE, (RwNote){ tip, { tip.x + 6, treble + 10 }, 3, N_ ("sideways %s") });
}

static void
draw_above (RwDraft *draft)
{
  double reach = fmax (rw_plan_treble (&draft->result->plan, draft->result->side.nut_to_rim), 10) * 1.55;
  RwPoint from = rw_place_board (draft->result, draft->result->side.heel_start - NECK_SHOWN - 8, 0);
  RwPoint to = rw_place_board (draft->result, draft->result->side.nut_to_rim, 0);

  rw_draw_heel_above (draft, draft->result->side.heel_start - NECK_SHOWN, rim (draft));
  draw_board_above (draft);
  rw_draft_param (draft, RIM, rim_outer_diameter);
  draw_arc (draft, rim (draft), reach, N_ ("Rim"));
  draw_arc (draft, rim (draft) - draft->design->rim_wall, reach, N_ ("Inside of the rim"));
  rw_draft_slot (draft, HOOP, RW_HOOP_BORE);
  draw_arc (draft, hoop (draft), reach, N_ ("Tension hoop"));
  draw_below (draft);

  from = rw_map_plan (draft->result, from.x, from.y);
  to = rw_map_plan (draft->result, to.x, to.y);
  rw_draft_slot (draft, AXES, RW_NECK_SIDE_ANGLE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, from.x, from.y, to.x, to.y),
           N_ ("Centre line of the neck"), 0);
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (
      rw_sheet_line (draft->sheet, RW_PEN_CENTRE, from.x, 0, -rim (draft) + draft->design->rim_wall + 20, 0),
      N_ ("Axis of the strings"), 0);
  above_sizes (draft);
}

/* ---- the face ---- */

/* From the rim's inside to the middle of the face. */
#define FACE_BESIDE 84.0

double
rw_heel_face_middle (const RwResult *result)
{
  return -result->used.rim_outer_diameter / 2 + result->used.rim_wall + FACE_BESIDE;
}

static void
draw_face (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double x = rw_heel_face_middle (draft->result), top = rw_heel_width (draft->result, 0) / 2,
         cap = rw_heel_width (draft->result, design->joint_heel_depth) / 2;
  double glue = rw_heel_width (draft->result, design->fretboard_thickness) / 2;
  double relief = fmin (rw_draft_value (draft, RW_JOINT_RELIEF_HEIGHT), design->joint_heel_depth),
         at = rw_heel_width (draft->result, relief) / 2;
  double level = height_at (draft, design->fretboard_thickness),
         foot = height_at (draft, design->joint_heel_depth);
  const RwPoint wood[] = { { x - glue, level }, { x + glue, level }, { x + cap, foot }, { x - cap, foot } };

  rw_draft_slot (draft, NECK, RW_JOINT_HEEL_WIDTH);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, wood, 4), N_ ("Heel face"), 0);
  rw_draft_param (draft, FRETBOARD, fretboard_thickness);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, x - top, level, x + top,
                         height_at (draft, 0)),
           N_ ("Fretboard"), 0);
  rw_draft_slot (draft, NECK, RW_JOINT_RELIEF_HEIGHT);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_OUTLINE, x - at, height_at (draft, relief), x + at,
                          height_at (draft, relief)),
           N_ ("Relief for the hoop"), 0);
}

static void
draw_face_holes (RwDraft *draft)
{
  RwAcross across = rw_across (draft->design);
  double x = rw_heel_face_middle (draft->result);

  for (int i = 0; i < across.count; i++)
    {
      gboolean stick = draft->design->joint_kind == RW_JOINT_STICK;
      RwSlot slot = stick ? RW_JOINT_STICK_ON_HEEL : (RwSlot)(RW_JOINT_HOLE_ON_HEEL + i + 1);
      double axis = -across.below[i], right = x + rw_heel_width (draft->result, 0) / 2;

      rw_draft_slot (draft, JOINT, slot);
      if (stick)
        rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_PAPER, x - across.half,
                               axis - across.half, x + across.half, axis + across.half),
                 N_ ("Stick"), 0);
      else
        rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_PAPER, x, axis, across.half),
                 N_ ("Hole in the heel"), i + 1);
      rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
      rw_sheet_line (draft->sheet, RW_PEN_CENTRE, x - across.half - 4, axis, x + across.half + 4, axis);
      rw_span_slot (
          draft, slot,
          (RwSpan){
              RW_MEASURE_VERTICAL, { right, axis }, { right, height_at (draft, 0) }, 7 + 8 * i, 1, NULL });
    }
}

static void
face_sizes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double x = rw_heel_face_middle (draft->result), half = rw_heel_width (draft->result, 0) / 2,
         cap = rw_heel_width (draft->result, design->joint_heel_depth) / 2;
  double top = height_at (draft, 0), foot = height_at (draft, design->joint_heel_depth);

  rw_span_slot (draft, RW_JOINT_HEEL_WIDTH,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { x - half, top }, { x + half, top }, 8, 1, NULL });
  rw_span_param (draft, RW_P_joint_heel_cap_width,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { x - cap, foot }, { x + cap, foot }, -8, 1, NULL });
  rw_span_slot (draft, RW_JOINT_RELIEF_HEIGHT,
                (RwSpan){ RW_MEASURE_VERTICAL,
                          { x - half, height_at (draft, rw_draft_value (draft, RW_JOINT_RELIEF_HEIGHT)) },
                          { x - half, top },
                          -7,
                          1,
                          NULL });
  rw_span_param (draft, RW_P_joint_heel_depth,
                 (RwSpan){ RW_MEASURE_VERTICAL, { x - half, foot }, { x - half, top }, -15, 1, NULL });
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_sheet_line (draft->sheet, RW_PEN_CENTRE, x, top + 5, x, foot - 5);
}

void
rw_draw_heel (RwDraft *draft)
{
  guint first = draft->sheet->items->len;

  draw_above (draft);
  if (draft->design->build_handed == RW_HANDED_LEFT)
    rw_sheet_mirror (draft->sheet, first);
  rw_sheet_move (draft->sheet, first, 0, rw_heel_plan_rise (draft->result));
  draw_side (draft);
  draw_bottoms (draft);
  draw_pot_beside (draft);
  draw_holes (draft);
  side_sizes (draft);
  draw_face (draft);
  draw_face_holes (draft);
  face_sizes (draft);
}
