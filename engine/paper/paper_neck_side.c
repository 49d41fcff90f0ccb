#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The neck from the side, turned so that the fretboard lies level.  Frame: x from the nut line to the body, y
 * over the fretboard's surface. */

static void
draw_neck (RwDraft *draft)
{
  double angle = draft->result->side.angle;
  RwPoint nut = rw_place_neck (draft->result, 0, 0);

  rw_draw_neck_side (draft);
  rw_draft_drop_unsolved (draft);
  if (isfinite (nut.x + nut.y))
    {
      rw_sheet_move (draft->sheet, 0, -nut.x, -nut.y);
      rw_sheet_turn (draft->sheet, 0, -angle);
    }
}

static void
draw_channel (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double end = draft->result->side.nut_to_rim - design->neck_rod_end, top = -design->fretboard_thickness;

  if (design->neck_rod_present != RW_YES)
    return;
  rw_draft_param (draft, NECK, neck_rod_depth);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_HIDDEN, RW_TINT_NONE, design->neck_rod_start,
                         top - design->neck_rod_depth, end, top),
           N_ ("Rod channel"), 0);
  rw_span_param (
      draft, RW_P_neck_rod_depth,
      (RwSpan){ RW_MEASURE_VERTICAL, { end, top - design->neck_rod_depth }, { end, top }, 4, 2, NULL });
}

/* The piece of wood that it is sawn from in one: drawn where the glue face lies on its upper face. */
static void
draw_blank (RwDraft *draft)
{
  double allowance = draft->design->neck_blank_allowance, top = -draft->design->fretboard_thickness;
  double right = draft->result->side.nut_to_rim + rw_draft_value (draft, RW_JOINT_HOLLOW) + allowance / 2;
  double left = right - rw_draft_value (draft, RW_NECK_BLANK_LENGTH);

  rw_draft_slot (draft, NECK, RW_NECK_BLANK_LENGTH);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_PHANTOM, RW_TINT_NONE, left,
                         top - rw_draft_value (draft, RW_NECK_BLANK_DEPTH), right, top),
           N_ ("Neck blank"), 0);
  rw_span_slot (draft, RW_NECK_BLANK_LENGTH,
                (RwSpan){ RW_MEASURE_HORIZONTAL,
                          { left, top - rw_draft_value (draft, RW_NECK_BLANK_DEPTH) },
                          { right, top - rw_draft_value (draft, RW_NECK_BLANK_DEPTH) },
                          -10,
                          1,
                          NULL });
  rw_span_slot (draft, RW_NECK_BLANK_DEPTH,
                (RwSpan){ RW_MEASURE_VERTICAL,
                          { left, top - rw_draft_value (draft, RW_NECK_BLANK_DEPTH) },
                          { left, top },
                          -10,
                          1,
                          NULL });
}

/* ---- stations ---- */

#define STATION_OVER 7.0
#define STATION_UNDER 6.0

static void
draw_station (RwDraft *draft, double x, double thickness)
{
  rw_draft_set (draft, RW_LAYER_NECK, RW_SUBJECT_NONE);
  rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, x, STATION_OVER, x, -thickness - STATION_UNDER);
}

static void
draw_stations (RwDraft *draft)
{
  static const int frets[] = { 1, 5, 7, 12 };
  double heel = draft->result->side.heel_start;

  for (guint i = 0; i < G_N_ELEMENTS (frets); i++)
    {
      double x = draft->result->plan.fret_x[frets[i]],
             thickness = rw_draft_value (draft, RW_NECK_THICKNESS + frets[i]);
      g_autofree char *words = g_strdup_printf (_("fret %d"), frets[i]);

      if (!(x < heel))
        continue;
      draw_station (draft, x, thickness);
      rw_paper_words (draft, (RwPoint){ x, STATION_OVER + 1.5 }, words);
      rw_span_slot (draft, RW_NECK_THICKNESS + frets[i],
                    (RwSpan){ RW_MEASURE_VERTICAL, { x, -thickness }, { x, 0 }, -4, 1, NULL });
    }
  draw_station (draft, heel, draft->design->neck_thickness_last);
  rw_paper_words (draft, (RwPoint){ heel, -draft->design->neck_thickness_last - STATION_UNDER - 4 },
                  _("heel starts"));
  rw_span_param (
      draft, RW_P_neck_thickness_last,
      (RwSpan){
          RW_MEASURE_VERTICAL, { heel, -draft->design->neck_thickness_last }, { heel, 0 }, -4, 1, NULL });
}

/* ---- sizes ---- */

#define OVER 10.0
#define HEAD_SWEEP 100.0 /* radius of the headstock's angle */

/* The heel's face falls square to the head plane from where the board meets the rim. */
static void
draw_face (RwDraft *draft)
{
  double rim = draft->result->side.nut_to_rim, angle = draft->result->side.angle,
         deep = draft->design->joint_heel_depth + 8;

  rw_draft_slot (draft, AXES, RW_JOINT_HEEL_ANGLE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, rim + OVER * sin (angle), OVER * cos (angle),
                          rim - deep * sin (angle), -deep * cos (angle)),
           N_ ("Rim's outer face on the axis"), 0);
}

static void
draw_sizes (RwDraft *draft)
{
  double rim = draft->result->side.nut_to_rim;

  rw_span_slot (draft, RW_NECK_NUT_TO_RIM,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { 0, STATION_OVER }, { rim, STATION_OVER }, 22, 1, NULL });
  rw_sweep_param (draft, RW_P_headstock_angle,
                  (RwSweep){ { -draft->design->nut_thickness, -draft->design->fretboard_thickness },
                             HEAD_SWEEP,
                             G_PI,
                             G_PI + draft->design->headstock_angle * G_PI / 180,
                             1,
                             NULL });
  rw_span_slot (draft, RW_NECK_BOARD_LENGTH,
                (RwSpan){ RW_MEASURE_HORIZONTAL,
                          { 0, STATION_OVER },
                          { rw_draft_value (draft, RW_NECK_BOARD_LENGTH), STATION_OVER },
                          14,
                          1,
                          NULL });
}

/* Within the channel, where no other line is; and which side it is seen from. */
static void
draw_grain (RwDraft *draft)
{
  double to_rim = draft->result->side.nut_to_rim;
  double y = -draft->design->fretboard_thickness - 0.7 * draft->design->neck_rod_depth;

  rw_paper_grain (draft, (RwPoint){ to_rim * 0.5, y }, (RwPoint){ to_rim * 0.6, y });
  rw_paper_words (draft, (RwPoint){ to_rim * 0.62, -draft->design->neck_thickness_last - 14 },
                  rw_near_side (draft->design) < 0 ? _("seen from the bass side") : _("seen from the treble side"));
}

/* Told where the heel's face begins. */
static void
note_shim (RwDraft *draft)
{
  double rim = draft->result->side.nut_to_rim, deep = 0.6 * draft->design->joint_heel_depth;

  if (fabs (draft->design->joint_shim) > 0)
    rw_note_param (draft, RW_P_joint_shim,
                   (RwNote){ { rim - deep * sin (draft->result->side.angle), -deep }, { rim + 14, -deep - 10 }, 1,
                             N_("shim %s") });
}

static void
write_notes (RwDraft *draft)
{
  RwPoint at = rw_paper_under (draft);
  g_autofree char *head = rw_paper_degrees (draft, draft->design->headstock_angle);
  g_autofree char *heel = rw_paper_degrees (draft, rw_draft_value (draft, RW_JOINT_HEEL_ANGLE));
  g_autofree char *left = rw_paper_length (draft, rw_draft_value (draft, RW_NECK_UNDER_ROD), 1);

  rw_paper_print (draft, &at,
                  _("Fretboard level, nut line at the mark. Headstock at %s to it; heel face at %s to it, "
                      "told on the heel card."),
                  head, heel);
  if (draft->design->neck_rod_present == RW_YES)
    rw_paper_print (draft, &at,
                    _("The channel is cut while the blank is square; at least %s of wood stays under it "
                        "when the back is carved as drawn."),
                    left);
  rw_paper_line (draft, &at,
                 _("The sweep of the heel between its start and the cap is a proposal: follow hand and "
                     "eye, but keep clear of the holes for rods or stick."));
}

RwSheet *
rw_paper_neck_side (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Neck from the side"));

  draw_neck (&draft);
  draw_channel (&draft);
  draw_blank (&draft);
  draw_stations (&draft);
  draw_face (&draft);
  draw_sizes (&draft);
  rw_paper_mark (&draft, (RwPoint){ 0, STATION_OVER }, 0, 1);
  draw_grain (&draft);
  note_shim (&draft);
  write_notes (&draft);
  return rw_paper_end (&draft);
}
