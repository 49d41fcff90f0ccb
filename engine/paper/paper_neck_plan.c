#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The neck on its glue face, as marked out on the squared blank: edges, rod channel, heel with its hollow,
 * headstock as it falls on the blank, and the facet lines of the back.  Frame: x from the nut line along the
 * neck's centre line, y to the treble side. */

static RwPoint
head_on_blank (const RwResult *result, double u, double v)
{
  double tilt = result->used.headstock_angle * G_PI / 180;

  return (RwPoint){
    -result->used.nut_thickness - u * cos (tilt) - result->used.headstock_overlay * sin (tilt), v
  };
}

static double
heel_start (const RwDraft *draft)
{
  return draft->result->side.heel_start;
}

/* The heel's sides go on along the board's edges to the hollow, an arc of the rim's outside. */
static void
draw_heel (RwDraft *draft)
{
  const RwPlan *plan = &draft->result->plan;
  double rim = draft->result->side.nut_to_rim, radius = draft->design->rim_outer_diameter / 2;
  double edges[] = { rw_plan_treble (plan, rim), rw_plan_bass (plan, rim) };
  RwPoint start[2], centre = rw_map_board (draft->result, rim + radius, 0), corner;

  rw_place_across (draft->result, rw_draft_value (draft, RW_NECK_BOARD_LENGTH), 0, &start[1], &start[0]);
  rw_draft_slot (draft, NECK, RW_JOINT_HOLLOW);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE);
  for (int i = 0; i < 2; i++)
    {
      RwPoint from = rw_map_board (draft->result, start[i].x, start[i].y);

      corner = rw_map_board (draft->result, rim + radius - sqrt (radius * radius - edges[i] * edges[i]),
                             edges[i]);
      rw_path_move (draft->sheet, from.x, from.y);
      rw_path_line (draft->sheet, corner.x, corner.y);
    }
  rw_path_arc (draft->sheet, centre, radius, atan2 (corner.y - centre.y, corner.x - centre.x) + 2 * G_PI,
               G_PI - asin (edges[0] / radius) - atan (plan->centre_slope));
  rw_name (rw_path_end (draft->sheet), N_ ("Heel"), 0);
}

static void
draw_channel (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double half = design->neck_rod_width / 2, end = draft->result->side.nut_to_rim - design->neck_rod_end;

  if (design->neck_rod_present != RW_YES)
    return;
  rw_draft_param (draft, NECK, neck_rod_width);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_HIDDEN, RW_TINT_NONE, design->neck_rod_start, -half, end, half),
           N_ ("Rod channel"), 0);
  rw_span_param (draft, RW_P_neck_rod_width,
                 (RwSpan){ RW_MEASURE_VERTICAL, { end, -half }, { end, half }, 10, 1, NULL });
}

/* Where the first facet meets the back, on both sides, from the first fret to the heel's start. */
static void
draw_facet_line (RwDraft *draft, RwSlot row, int side)
{
  static const int frets[] = { 1, 5, 7, 12 };

  rw_draft_slot (draft, NECK, row + 1);
  rw_path_begin (draft->sheet, RW_PEN_HIDDEN, RW_TINT_NONE);
  for (guint i = 0; i < G_N_ELEMENTS (frets); i++)
    {
      double x = draft->result->plan.fret_x[frets[i]], y = side * rw_draft_value (draft, row + frets[i]);

      if (i == 0)
        rw_path_move (draft->sheet, x, y);
      else if (x <= heel_start (draft))
        rw_path_line (draft->sheet, x, y);
    }
  rw_name (rw_path_end (draft->sheet), N_ ("First facet on the back"), 0);
}

static void
draw_stations (RwDraft *draft)
{
  static const int frets[] = { 1, 5, 7, 12 };

  for (guint i = 0; i < G_N_ELEMENTS (frets); i++)
    {
      double x = draft->result->plan.fret_x[frets[i]];
      g_autofree char *words = g_strdup_printf (_("fret %d"), frets[i]);
      double half = draft->design->nut_width / 2 + 14;

      if (!(x <= heel_start (draft)))
        continue;
      rw_draft_set (draft, RW_LAYER_NECK, RW_SUBJECT_NONE);
      rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, x, -half, x, half);
      rw_paper_words (draft, (RwPoint){ x, half + 1.5 }, words);
    }
}

static void
draw_axes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  RwPoint from = rw_map_board (draft->result, -40, 0),
          to = rw_map_board (draft->result, draft->result->side.nut_to_rim + 30, 0);

  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE,
                          head_on_blank (draft->result, design->headstock_length, 0).x - 10, 0,
                          draft->result->side.nut_to_rim + 30, 0),
           N_ ("Centre line of the neck"), 0);
  rw_draft_slot (draft, AXES, RW_NECK_SIDE_ANGLE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_GRAIN, from.x, from.y, to.x, to.y), N_ ("Axis of the strings"),
           0);
}

static void
draw_sizes (RwDraft *draft)
{
  RwPoint bass, treble, foot = { 0, -draft->design->headstock_width / 2 };
  double rim = draft->result->side.nut_to_rim;

  rw_place_across (draft->result, 0, 0, &bass, &treble);
  bass = rw_map_board (draft->result, bass.x, bass.y);
  treble = rw_map_board (draft->result, treble.x, treble.y);
  rw_span_param (draft, RW_P_nut_width, (RwSpan){ RW_MEASURE_VERTICAL, bass, treble, 6, 1, NULL });
  rw_span_slot (draft, RW_NECK_NUT_TO_RIM,
                (RwSpan){ RW_MEASURE_HORIZONTAL, foot, { rim, foot.y }, -8, 1, NULL });
  rw_span_slot (draft, RW_JOINT_HEEL_WIDTH,
                (RwSpan){ RW_MEASURE_VERTICAL,
                          { rim, rw_plan_bass (&draft->result->plan, rim) },
                          { rim, rw_plan_treble (&draft->result->plan, rim) },
                          34,
                          1,
                          NULL });
}

static void
write_notes (RwDraft *draft)
{
  RwPoint at = rw_paper_under (draft);
  g_autofree char *lean = rw_paper_degrees (draft, fabs (rw_draft_value (draft, RW_NECK_SIDE_ANGLE)));
  gboolean treble = rw_draft_value (draft, RW_NECK_SIDE_ANGLE) > 0;

  rw_paper_line (draft, &at,
                 _("Seen from the playing side, on the blank's glue face; the headstock as it falls square "
                     "on that face. Dashed lines on both sides of the centre: first facet on the back."));
  rw_paper_print (
      draft, &at,
      _("The neck's centre line and the strings' axis (pale) stand at %s: the headstock end leans to the "
          "%s side. Cut the heel to the axis, or the strings drag the bridge aside."),
      lean, treble ? _("treble") : _("bass"));
}

RwSheet *
rw_paper_neck_plan (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Neck plan"));
  double half = draft.design->headstock_width / 2;

  rw_draw_head_outline (&draft, head_on_blank);
  g_array_index (draft.sheet->items, RwItem, draft.sheet->items->len - 1).tint = RW_TINT_NONE;
  rw_draw_ears (&draft);
  rw_draft_slot (&draft, FRETBOARD, RW_NECK_BOARD_LENGTH);
  rw_paper_board (&draft, rw_map_board, RW_PEN_OUTLINE, 0);
  rw_draft_param (&draft, FRETBOARD, nut_thickness);
  rw_name (rw_sheet_box (draft.sheet, RW_PEN_EDGE, RW_TINT_NONE, -draft.design->nut_thickness,
                         -draft.design->nut_width / 2, 0, draft.design->nut_width / 2),
           N_ ("Nut"), 0);
  draw_heel (&draft);
  draw_channel (&draft);
  draw_facet_line (&draft, RW_NECK_FACET_BACK_TREBLE, 1);
  draw_facet_line (&draft, RW_NECK_FACET_BACK_BASS, -1);
  draw_stations (&draft);
  draw_axes (&draft);
  draw_sizes (&draft);
  rw_paper_side (&draft, (RwPoint){ heel_start (&draft) * 0.6, half + 2 }, 0, _("treble"));
  rw_paper_side (&draft, (RwPoint){ heel_start (&draft) * 0.6, -half + 2 }, 0, _("bass"));
  rw_paper_grain (&draft, (RwPoint){ heel_start (&draft) * 0.72, half + 2 },
                  (RwPoint){ heel_start (&draft) * 0.85, half + 2 });
  rw_paper_mirror_across (&draft);
  write_notes (&draft);
  return rw_paper_end (&draft);
}
