#include "draw_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* One segment, or the section of one stave: the blank as sawn, and the ring that is turned from it. */

typedef struct
{
  RwPoint at;                 /* middle of the long edge, from which it lies downwards */
  double outer, inner, width; /* long edge, short edge, strip width */
} Blank;

static Blank
blank_of (const RwDraft *draft, RwPoint at)
{
  double strip = draft->design->rim_strip_width;

  double outer = rw_draft_value (draft, RW_RIM_SEGMENT_OUTER_EDGE);

  return (Blank){ { at.x + outer / 2, at.y },
                  outer,
                  rw_draft_value (draft, RW_RIM_SEGMENT_INNER_EDGE),
                  strip > 0 ? strip : rw_draft_value (draft, RW_RIM_SEGMENT_MIN_WIDTH) };
}

static void
draw_blank (RwDraft *draft, const Blank *blank)
{
  RwPoint at = blank->at;
  const RwPoint corners[] = {
    { at.x - blank->outer / 2, at.y },
    { at.x + blank->outer / 2, at.y },
    { at.x + blank->inner / 2, at.y - blank->width },
    { at.x - blank->inner / 2, at.y - blank->width },
  };

  rw_draft_slot (draft, RIM, RW_RIM_SEGMENT_OUTER_EDGE);
  rw_name (
      rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, corners, G_N_ELEMENTS (corners)),
      draft->design->rim_construction == RW_RIM_STAVES ? N_ ("Stave") : N_ ("Segment"), 0);
  rw_path_begin (draft->sheet, RW_PEN_GRAIN, RW_TINT_NONE);
  for (int i = 1; i < 7; i++)
    {
      double y = at.y - blank->width * i / 7, half = blank->inner / 2 * (i % 2 != 0 ? 0.7 : 0.9);

      rw_path_move (draft->sheet, at.x - half, y);
      rw_path_line (draft->sheet, at.x + half * (i % 3 != 0 ? 0.8 : 1), y);
    }
  rw_path_end (draft->sheet);
}

/* The turned faces pass through the blank. */
static void
draw_turned (RwDraft *draft, const Blank *blank)
{
  const RwDesign *design = draft->design;
  double radii[] = { design->rim_outer_diameter / 2, rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2 };
  RwPoint centre = { blank->at.x, blank->at.y - radii[0] - design->rim_turning_allowance };
  double half = G_PI / design->rim_segments;

  for (int i = 0; i < 2; i++)
    {
      rw_draft_set (draft, RW_LAYER_RIM,
                    i == 0 ? RW_SUBJECT_PARAM (rim_outer_diameter) : RW_SUBJECT_PARAM (rim_wall));
      rw_path_begin (draft->sheet, RW_PEN_PHANTOM, RW_TINT_NONE);
      rw_path_arc (draft->sheet, centre, radii[i], G_PI_2 + half, G_PI_2 - half);
      rw_name (rw_path_end (draft->sheet), i == 0 ? N_ ("Outside as turned") : N_ ("Inside as turned"), 0);
    }
  rw_span_param (draft, RW_P_rim_turning_allowance,
                 (RwSpan){ RW_MEASURE_VERTICAL,
                           { blank->at.x, blank->at.y - design->rim_turning_allowance },
                           blank->at,
                           3,
                           3,
                           NULL });
}

static void
blank_sizes (RwDraft *draft, const Blank *blank)
{
  double left = blank->at.x - blank->outer / 2, right = blank->at.x + blank->outer / 2;
  double top = blank->at.y, foot = top - blank->width, mitre = G_PI / draft->design->rim_segments;
  RwPoint inner[2] = { { blank->at.x - blank->inner / 2, foot }, { blank->at.x + blank->inner / 2, foot } };

  rw_span_slot (draft, RW_RIM_SEGMENT_OUTER_EDGE,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { left, top }, { right, top }, 8, 1, NULL });
  rw_span_slot (draft, RW_RIM_SEGMENT_INNER_EDGE,
                (RwSpan){ RW_MEASURE_HORIZONTAL, inner[0], inner[1], -8, 1, NULL });
  if (draft->design->rim_strip_width > 0)
    rw_span_param (draft, RW_P_rim_strip_width,
                   (RwSpan){ RW_MEASURE_VERTICAL, { right, foot }, { right, top }, 8, 1, NULL });
  else
    rw_span_slot (draft, RW_RIM_SEGMENT_MIN_WIDTH,
                  (RwSpan){ RW_MEASURE_VERTICAL, { right, foot }, { right, top }, 8, 1, NULL });
  rw_lead_out (draft, (RwPoint){ left, top }, (RwPoint){ left, foot - 4 });
  rw_sweep_slot (draft, RW_RIM_SEGMENT_MITRE,
                 (RwSweep){ { left, top }, blank->width * 0.9, -G_PI_2, mitre - G_PI_2, 2, N_ ("mitre %s") });
}

/* A course's edge: the thickness to plane the strip to before flattening. */
static void
draw_edge (RwDraft *draft, const Blank *blank, double top)
{
  double rough = rw_draft_value (draft, RW_RIM_COURSE_ROUGH + 1);
  double left = blank->at.x - blank->outer / 2, right = blank->at.x + blank->outer / 2;

  rw_draft_slot (draft, RIM, RW_RIM_COURSE_ROUGH + 1);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, left, top - rough, right, top),
           N_ ("Segment"), 0);
  rw_sheet_line (draft->sheet, RW_PEN_PHANTOM, left, top - rough + draft->design->rim_flatten_allowance,
                 right, top - rough + draft->design->rim_flatten_allowance);
  rw_span_slot (draft, RW_RIM_COURSE_ROUGH + 1,
                (RwSpan){ RW_MEASURE_VERTICAL, { right, top - rough }, { right, top }, 8, 2, NULL });
}

static void
draw_length (RwDraft *draft, const Blank *blank, double top)
{
  double length = rw_draft_value (draft, RW_RIM_STAVE_LENGTH);
  double left = blank->at.x - blank->outer / 2, right = blank->at.x + blank->outer / 2;

  rw_draft_slot (draft, RIM, RW_RIM_STAVE_LENGTH);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, left, top - length, right, top),
           N_ ("Stave"), 0);
  rw_span_slot (draft, RW_RIM_STAVE_LENGTH,
                (RwSpan){ RW_MEASURE_VERTICAL, { right, top - length }, { right, top }, 8, 1, NULL });
}

void
rw_draw_segment (RwDraft *draft, RwPoint at, double below)
{
  Blank blank = blank_of (draft, at);
  double top = at.y - blank.width - below;

  rw_caption (draft, at, 15,
              draft->design->rim_construction == RW_RIM_STAVES ? _("Stave") : _("Segment"));
  draw_blank (draft, &blank);
  draw_turned (draft, &blank);
  blank_sizes (draft, &blank);
  if (draft->design->rim_construction == RW_RIM_STAVES)
    draw_length (draft, &blank, top);
  else
    draw_edge (draft, &blank, top);
}

/* ---- the strip ---- */

/* So many segments are shown of a strip; it goes on after them. */
#define SHOWN 3

/* Segment i of the strip, its mid-line from x on; each second one lies the other way up. */
static void
draw_nested (RwDraft *draft, const Blank *blank, int i, double x)
{
  double middle = (blank->outer + blank->inner) / 2,
         slant = (blank->outer - blank->inner) / 4 * (i % 2 != 0 ? -1 : 1);
  double top = blank->at.y, foot = top - blank->width;
  const RwPoint corners[] = {
    { x - slant, top },
    { x + middle + slant, top },
    { x + middle - slant, foot },
    { x + slant, foot },
  };

  rw_draft_slot (draft, RIM, RW_RIM_COURSE_STRIP);
  rw_name (
      rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, corners, G_N_ELEMENTS (corners)),
      N_ ("Segment"), i + 1);
}

void
rw_draw_strip (RwDraft *draft, RwPoint at)
{
  Blank blank = blank_of (draft, at);
  double feed = rw_draft_value (draft, RW_RIM_SEGMENT_FEED), foot = at.y - blank.width,
         middle = at.y - blank.width / 2;
  double left = at.x + (blank.outer - blank.inner) / 4, end = left + SHOWN * feed;
  double slant = (blank.outer - blank.inner) / 4 * (SHOWN % 2 != 0 ? -1 : 1);

  rw_caption (draft, (RwPoint){ (left + end) / 2, at.y }, 3, _("Strip"));
  for (int i = 0; i < SHOWN; i++)
    draw_nested (draft, &blank, i, left + i * feed);
  rw_draft_slot (draft, RIM, RW_RIM_COURSE_STRIP);
  rw_sheet_line (draft->sheet, RW_PEN_PHANTOM, end - slant, at.y, end - slant + 24, at.y);
  rw_sheet_line (draft->sheet, RW_PEN_PHANTOM, end + slant, foot, end + slant + 24, foot);
  rw_sheet_line (draft->sheet, RW_PEN_PHANTOM, end - slant, at.y, end + slant, foot);
  rw_span_slot (draft, RW_RIM_SEGMENT_FEED,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { left, middle }, { left + feed, middle }, -16, 2, NULL });
  rw_note_slot (draft, RW_RIM_COURSE_STRIP,
                (RwNote){ { end + 12, at.y }, { end + 24, at.y + 22 }, 2, N_ ("strip %s") });
}
