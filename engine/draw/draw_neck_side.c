#include "draw_parts.h"

#include <math.h>

/* The neck from the side: wood with heel and headstock, board, frets, nut, tuners, side peg. */

static void
line_to (RwDraft *draft, RwPoint p)
{
  rw_path_line (draft->sheet, p.x, p.y);
}

static RwPoint
neck (const RwDraft *draft, double x, double over)
{
  return rw_place_neck (draft->result, x, over);
}

static RwPoint
head (const RwDraft *draft, double u, double over)
{
  return rw_place_head_side (draft->result, u, over);
}

/* The neck's back, and the headstock's. */
static RwPoint
back (const RwDraft *draft, double x)
{
  return neck (draft, x, -rw_neck_thickness (draft->result, x));
}

static RwPoint
head_back (const RwDraft *draft, double u)
{
  return head (draft, u, draft->design->headstock_overlay - draft->design->headstock_thickness);
}

/* Where a cylinder round the rim's axis cuts the cheek of the heel at a depth under the board's surface. */
static double
cheek (const RwDraft *draft, double radius, double depth)
{
  double half = rw_heel_width (draft->result, depth) / 2;

  return -sqrt (fmax (radius * radius - half * half, 0));
}

static double
height_at (const RwDraft *draft, double depth)
{
  return draft->design->neck_set_height - depth;
}

/* Thick at the head end it tilts the neck back, at the cap end forward. */
double
rw_heel_shim (const RwResult *result, double depth)
{
  double shim = result->used.joint_shim, share = depth / result->used.joint_heel_depth;

  return shim >= 0 ? shim * (1 - share) : -shim * share;
}

/* Face of the heel from the glue line down: relief for the hoop, then along the rim, or the shim, to the cap. */
#define FACE_CHORDS 6

static void
heel_face (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double radius = design->rim_outer_diameter / 2, angle = draft->result->side.angle;
  double relief = fmin (rw_draft_value (draft, RW_JOINT_RELIEF_HEIGHT), design->joint_heel_depth);
  double wall = cheek (draft, radius + fmax (rw_draft_value (draft, RW_JOINT_RELIEF_DEPTH), 0),
                       design->fretboard_thickness);
  double glue = draft->result->side.nut_to_rim
                - (-radius + design->fretboard_thickness * sin (angle) - wall) / cos (angle);

  line_to (draft, neck (draft, glue, -design->fretboard_thickness));
  line_to (draft, (RwPoint){ wall, height_at (draft, relief) });
  for (int i = 0; i <= FACE_CHORDS; i++)
    {
      double depth = relief + (design->joint_heel_depth - relief) * i / FACE_CHORDS;

      line_to (draft, (RwPoint){ cheek (draft, radius, depth) - rw_heel_shim (draft->result, depth),
                                 height_at (draft, depth) });
    }
}

/* From the cap up to where the heel starts. */
static void
heel_sweep (RwDraft *draft)
{
  RwHeelSweep sweep = rw_heel_sweep (draft->result);
  RwPoint corner = sweep.corner;

  line_to (draft, (RwPoint){ corner.x + 1.5, corner.y });
  rw_path_curve (draft->sheet, corner, corner, sweep.p[0]);
  rw_path_curve (draft->sheet, sweep.p[1], sweep.p[2], sweep.p[3]);
}

void
rw_path_heel (RwDraft *draft)
{
  heel_face (draft);
  heel_sweep (draft);
}

void
rw_draw_shim (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double radius = design->rim_outer_diameter / 2, cap = design->joint_heel_depth;
  double top = fmin (rw_draft_value (draft, RW_JOINT_RELIEF_HEIGHT), cap);
  const RwPoint corners[] = {
    { cheek (draft, radius, top), height_at (draft, top) },
    { cheek (draft, radius, cap), height_at (draft, cap) },
    { cheek (draft, radius, cap) - rw_heel_shim (draft->result, cap), height_at (draft, cap) },
    { cheek (draft, radius, top) - rw_heel_shim (draft->result, top), height_at (draft, top) },
  };

  if (!(fabs (design->joint_shim) > 0))
    return;
  rw_draft_param (draft, JOINT, joint_shim);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_BONE, corners, G_N_ELEMENTS (corners)),
           N_ ("Shim in the heel joint"), 0);
}

static void
draw_wood (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double length = design->headstock_length;
  RwPoint start = neck (draft, -design->nut_thickness, -design->fretboard_thickness);

  rw_draft_param (draft, NECK, neck_thickness_first);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD);
  rw_path_move (draft->sheet, start.x, start.y);
  rw_path_heel (draft);
  line_to (draft, back (draft, RW_HOLLOW_NECK));
  rw_path_curve (draft->sheet, back (draft, 0), head_back (draft, RW_HOLLOW_HEAD * 0.25),
                 head_back (draft, fmin (RW_HOLLOW_HEAD, length)));
  line_to (draft, head_back (draft, length));
  line_to (draft, head (draft, length, 0));
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Neck"), 0);
  rw_draw_shim (draft);
}

static void
draw_overlay (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double over = design->headstock_overlay, mitre = over * tan (design->headstock_angle * G_PI / 180);
  const RwPoint shape[] = {
    head (draft, 0, 0),
    head (draft, -mitre, over),
    head (draft, design->headstock_length, over),
    head (draft, design->headstock_length, 0),
  };

  rw_draft_param (draft, HEADSTOCK, headstock_overlay);
  if (over > 0)
    rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, shape, G_N_ELEMENTS (shape)),
             N_ ("Overlay"), 0);
}

static void
draw_board (RwDraft *draft)
{
  double end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH), foot = -draft->design->fretboard_thickness;
  const RwPoint shape[]
      = { neck (draft, 0, foot), neck (draft, 0, 0), neck (draft, end, 0), neck (draft, end, foot) };

  rw_draft_param (draft, FRETBOARD, fretboard_thickness);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_DARK_WOOD, shape, G_N_ELEMENTS (shape)),
           N_ ("Fretboard"), 0);
}

static void
draw_fret (RwDraft *draft, int fret)
{
  double x = rw_slot_bass (draft->result, fret), half = draft->design->frets_crown_width / 2;
  double over = draft->design->frets_crown_height * 4 / 3;
  RwPoint from = neck (draft, x - half, 0);

  rw_draft_slot (draft, FRETBOARD, rw_slot_row (draft->result, fret));
  rw_path_begin (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL);
  rw_path_move (draft->sheet, from.x, from.y);
  rw_path_curve (draft->sheet, neck (draft, x - half, over), neck (draft, x + half, over),
                 neck (draft, x + half, 0));
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Fret"), fret);
}

/* The nut stands a little over the strings' undersides, and slopes to the headstock. */
static void
draw_nut (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double crown = design->frets_count > 0.5 ? design->frets_crown_height : 0;
  double top = crown + design->nut_string_height + 0.6;
  const RwPoint shape[] = {
    neck (draft, 0, -design->fretboard_thickness),
    neck (draft, 0, top),
    neck (draft, -0.4 * design->nut_thickness, top),
    neck (draft, -design->nut_thickness, top - 1),
    neck (draft, -design->nut_thickness, -design->fretboard_thickness),
  };

  rw_draft_param (draft, FRETBOARD, nut_thickness);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_BONE, shape, G_N_ELEMENTS (shape)),
           N_ ("Nut"), 0);
}

static RwItem *
head_box (RwDraft *draft, RwTint tint, double middle, double half, double low, double high)
{
  const RwPoint shape[] = {
    head (draft, middle - half, low),
    head (draft, middle + half, low),
    head (draft, middle + half, high),
    head (draft, middle - half, high),
  };

  return rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, tint, shape, G_N_ELEMENTS (shape));
}

/* A tuner that goes straight through: post and bushing over the face, housing, shaft and knob behind. */
static void
draw_tuner (RwDraft *draft, int string)
{
  const RwDesign *design = draft->design;
  double u = rw_draft_value (draft, RW_HEADSTOCK_POST_X + string), face = design->headstock_overlay;
  double behind = face - design->headstock_thickness, hole = design->headstock_post_hole;

  rw_draft_slot (draft, HEADSTOCK, RW_HEADSTOCK_POST_X + string);
  rw_name (head_box (draft, RW_TINT_METAL, u, 0.3 * hole, face, face + 14), N_ ("Post"), string);
  rw_name (head_box (draft, RW_TINT_METAL, u, 0.62 * hole, face, face + 2), N_ ("Tuner bushing"), string);
  rw_draft_param (draft, HEADSTOCK, headstock_button);
  rw_name (head_box (draft, RW_TINT_METAL, u, design->headstock_button / 2, behind, behind - 13),
           N_ ("Tuner housing"), string);
  rw_name (head_box (draft, RW_TINT_METAL, u, 2.5, behind - 13, behind - 17), N_ ("Tuner housing"), string);
  rw_name (head_box (draft, RW_TINT_BONE, u, 8.5, behind - 17, behind - 26), N_ ("Tuner knob"), string);
}

static void
draw_tuners (RwDraft *draft)
{
  int near = rw_near_side (draft->design);

  for (int i = 1; i <= draft->result->plan.strings; i++)
    if (rw_draft_value (draft, RW_HEADSTOCK_POST_Y + i) * near > 0)
      draw_tuner (draft, i);
}

/* The side peg stands in the bass side of the neck: it shows end on where that is the near side. */
static void
draw_side_peg (RwDraft *draft)
{
  double x = draft->result->plan.short_x - draft->design->fifth_peg_distance;
  RwPoint at = neck (draft, x, -draft->design->fretboard_thickness - 4);

  rw_draft_param (draft, NECK, fifth_peg_distance);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_OUTLINE, RW_TINT_BONE, at.x, at.y, 7.5), N_ ("Side peg"), 0);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL, at.x, at.y, 2.2), N_ ("Side peg"), 0);
}

void
rw_draw_neck_side (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  const RwPlan *plan = &draft->result->plan;
  double end = rw_draft_value (draft, RW_NECK_BOARD_LENGTH);

  draw_tuners (draft);
  draw_wood (draft);
  draw_overlay (draft);
  draw_board (draft);
  for (int fret = 1; design->frets_count > 0.5 && fret <= plan->last && plan->fret_x[fret] < end; fret++)
    draw_fret (draft, fret);
  draw_nut (draft);
  if (plan->has_short && design->fifth_route == RW_ROUTE_SIDE_PEG && rw_near_side (design) < 0)
    draw_side_peg (draft);
}
