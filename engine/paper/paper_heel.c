#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The heel: the joint as drawn, a wedge that sets the cut to the neck angle, and a card with the rim's curve
 * to try the hollow with. */

#define WEDGE_LENGTH 140.0
#define WEDGE_LEAST 4.0 /* height of its thin end, so that it can be cut */

static double
wedge_height (const RwDraft *draft)
{
  return WEDGE_LEAST + WEDGE_LENGTH * tan (fabs (rw_draft_value (draft, RW_NECK_ANGLE)) * G_PI / 180);
}

/* at: lower left corner. */
static void
draw_wedge (RwDraft *draft, RwPoint at)
{
  double angle = rw_draft_value (draft, RW_NECK_ANGLE), rise = wedge_height (draft) - WEDGE_LEAST;
  const RwPoint corners[] = { at,
                              { at.x + WEDGE_LENGTH, at.y },
                              { at.x + WEDGE_LENGTH, at.y + WEDGE_LEAST },
                              { at.x, at.y + WEDGE_LEAST + rise } };
  g_autofree char *degrees = rw_paper_degrees (draft, angle), *high = rw_paper_length (draft, rise, 2);
  g_autofree char *words
      = g_strdup_printf (_("wedge at the neck angle, %s: rises %s over its length"), degrees, high);

  rw_draft_slot (draft, JOINT, RW_NECK_ANGLE);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, corners, G_N_ELEMENTS (corners)),
           N_ ("Wedge for the saw"), 0);
  at.y -= 5;
  rw_paper_line (draft, &at, words);
}

#define CURVE_PAST 10.0
#define CURVE_BACK 16.0
#define CURVE_OVER 12.0 /* its middle over that of the view from above */

/* at: the middle of the curve. */
static void
draw_curve (RwDraft *draft, RwPoint at)
{
  double radius = draft->design->rim_outer_diameter / 2;
  double half = fmin (rw_draft_value (draft, RW_JOINT_HEEL_WIDTH) / 2 + CURVE_PAST, radius);
  double turn = asin (half / radius), foot = at.y - (radius - radius * cos (turn)) - CURVE_BACK;

  rw_draft_param (draft, RIM, rim_outer_diameter);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE);
  rw_path_move (draft->sheet, at.x - half, foot);
  rw_path_arc (draft->sheet, (RwPoint){ at.x, at.y - radius }, radius, G_PI_2 + turn, G_PI_2 - turn);
  rw_path_line (draft->sheet, at.x + half, foot);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Curve of the rim"), 0);
  rw_sheet_line (draft->sheet, RW_PEN_CENTRE, at.x, at.y + 3, at.x, foot - 3);
  rw_paper_words (draft, (RwPoint){ at.x, foot - 6 }, _("curve of the rim's outside, for the hollow"));
}

/* ---- the shim ---- */

#define TAPER_BESIDE 12.0

/* Its outline as the heel's face has it under the relief, on the axis at x = 0; y from its upper edge. */
static void
draw_shim_outline (RwDraft *draft, double top, double cap)
{
  double high = rw_heel_width (draft->result, top) / 2, low = rw_heel_width (draft->result, cap) / 2;
  const RwPoint corners[] = { { -high, 0 }, { high, 0 }, { low, top - cap }, { -low, top - cap } };
  RwAcross across = rw_across (draft->design);

  rw_draft_param (draft, JOINT, joint_shim);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, corners, G_N_ELEMENTS (corners)),
           N_ ("Shim in the heel joint"), 0);
  for (int i = 0; i < across.count; i++)
    {
      double axis = top - draft->design->neck_set_height - across.below[i];

      if (draft->design->joint_kind == RW_JOINT_STICK)
        rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, -across.half, axis - across.half, across.half,
                      axis + across.half);
      else
        rw_paper_hole (draft, (RwPoint){ 0, axis }, across.half, N_ ("Hole in the heel"), i + 1);
    }
}

/* Its taper on the edge, beside; thicknesses at both ends of what is left of it under the relief. */
static void
draw_shim_taper (RwDraft *draft, double x, double top, double cap)
{
  double thick[2] = { rw_heel_shim (draft->result, top), rw_heel_shim (draft->result, cap) };
  const RwPoint corners[] = { { x, 0 }, { x + thick[0], 0 }, { x + thick[1], top - cap }, { x, top - cap } };
  RwPoint upper[2] = { { x, 0 }, { x + thick[0], 0 } }, lower[2] = { { x, top - cap }, { x + thick[1], top - cap } };

  rw_draft_param (draft, JOINT, joint_shim);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_NONE, corners, G_N_ELEMENTS (corners)),
           N_ ("Shim in the heel joint"), 0);
  rw_draft_param (draft, DIMENSIONS, joint_shim);
  rw_sheet_dimension (draft->sheet, RW_MEASURE_HORIZONTAL, upper[0], upper[1], 7, RW_FIGURE_WORKED_OUT, thick[0],
                      NULL);
  if (thick[1] > 0)
    rw_sheet_dimension (draft->sheet, RW_MEASURE_HORIZONTAL, lower[0], lower[1], -7, RW_FIGURE_WORKED_OUT,
                        thick[1], NULL);
  rw_sheet_dimension (draft->sheet, RW_MEASURE_VERTICAL, lower[0], upper[0], 12, RW_FIGURE_WORKED_OUT, cap - top,
                      NULL);
}

/* at: the upper left corner of what it takes. */
static void
draw_shim (RwDraft *draft, RwPoint at)
{
  double cap = draft->design->joint_heel_depth, top = fmin (rw_draft_value (draft, RW_JOINT_RELIEF_HEIGHT), cap);
  double half = rw_heel_width (draft->result, top) / 2;
  guint first = draft->sheet->items->len;

  draw_shim_outline (draft, top, cap);
  draw_shim_taper (draft, half + TAPER_BESIDE, top, cap);
  rw_paper_words (draft, (RwPoint){ 0, 3 }, _("shim: outline and taper"));
  rw_sheet_move (draft->sheet, first, at.x + half, at.y - 10);
}

/* Beside the wedge, under the face, where the second page has room. */
#define NOTES_WIDE 100.0
#define NOTES_BESIDE 36.0 /* of the face's middle */
#define NOTES_BELOW 22.0  /* the heel's cap */

static void
write_notes (RwDraft *draft, RwPoint at)
{
  g_autofree char *hollow = rw_paper_length (draft, rw_draft_value (draft, RW_JOINT_HOLLOW), 1);
  g_autofree char *deep = rw_paper_length (draft, rw_draft_value (draft, RW_JOINT_RELIEF_DEPTH), 1);
  g_autofree char *down = rw_paper_length (draft, rw_draft_value (draft, RW_JOINT_RELIEF_HEIGHT), 1);
  g_autofree char *heel = rw_paper_degrees (draft, rw_draft_value (draft, RW_JOINT_HEEL_ANGLE));
  g_autofree char *cut = g_strdup_printf (_("Cut the face while the blank is square: %s to the fretboard. "
                                             "Lay the wedge under the blank, try the cut in "
                                             "scrap, and check with a bevel."),
                                          heel);
  g_autofree char *hollows = g_strdup_printf (_("Hollow %s deep in the middle. Relief for the hoop %s deep, "
                                                 "down to %s under the fretboard's surface."),
                                              hollow, deep, down);

  rw_paper_line_within (draft, &at, NOTES_WIDE, cut);
  rw_paper_line_within (draft, &at, NOTES_WIDE, hollows);
  rw_paper_line_within (
      draft, &at, NOTES_WIDE,
      _("A straightedge along the frets then shows the board's height over the head plane at the "
         "rim; ease the face until it is right. Mark the rim's holes from the neck."));
  rw_paper_line_within (
      draft, &at, NOTES_WIDE,
      _("Measured: rim outside ____________   neck angle ____________   board over the head at "
         "the rim ____________"));
  rw_paper_line_within (
      draft, &at, NOTES_WIDE,
      _("A neck blank is heavy and tips: clamp it to a jig for every cut, and follow the saw "
         "maker's manual."));
}

#define SHIM_UNDER 12.0 /* the wedge */
#define BEHIND 58.0 /* from the rim's face to the words of the views */

/* Which view is which, and which way round it lies. */
static void
draw_sides (RwDraft *draft)
{
  double x = -draft->design->rim_outer_diameter / 2 - BEHIND, rise = rw_heel_plan_rise (draft->result);
  double half = rw_draft_value (draft, RW_JOINT_HEEL_WIDTH) / 2;
  gboolean left = draft->design->build_handed == RW_HANDED_LEFT;

  rw_paper_words (draft, (RwPoint){ x, rise + half + 3 }, left ? _("bass side") : _("treble side"));
  rw_paper_words (draft, (RwPoint){ x, rise - half - 6 }, left ? _("treble side") : _("bass side"));
  rw_paper_words (draft, (RwPoint){ x - 6, -draft->design->neck_thickness_last - 24 },
                  _("from the side, head side up"));
}

RwSheet *
rw_paper_heel (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Heel card"));
  RwPoint under;

  rw_draw_heel (&draft);
  draw_sides (&draft);
  under = rw_paper_under (&draft);
  draw_wedge (&draft, (RwPoint){ under.x, under.y - wedge_height (&draft) });
  if (fabs (draft.design->joint_shim) > 0)
    draw_shim (&draft, (RwPoint){ under.x, under.y - wedge_height (&draft) - SHIM_UNDER });
  draw_curve (&draft,
              (RwPoint){ rw_heel_face_middle (draft.result), rw_heel_plan_rise (draft.result) + CURVE_OVER });
  write_notes (&draft,
               (RwPoint){ rw_heel_face_middle (draft.result) - NOTES_BESIDE,
                          draft.design->neck_set_height - draft.design->joint_heel_depth - NOTES_BELOW });
  return rw_paper_end (&draft);
}
