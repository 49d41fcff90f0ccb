#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#include "model/profile.h"

/* Gauges to hold to the carved back: cards with the neck's curve cut out, the glue line as their upper edge.
 * Seen from the body towards the headstock, so that the treble side is on the right. */

typedef struct
{
  double x;       /* along the axis */
  int fret;       /* 0: where the heel starts */
  double half[2]; /* bass, treble, from the centre line */
  double depth;   /* below the glue line */
} Section;

static Section
section_at (const RwDraft *draft, int fret)
{
  const RwPlan *plan = &draft->result->plan;
  double x = fret > 0 ? plan->fret_x[fret] : draft->result->side.heel_start,
         centre = rw_plan_centre (plan, x);

  return (Section){ x,
                    fret,
                    { centre - rw_plan_bass (plan, x), rw_plan_treble (plan, x) - centre },
                    rw_neck_thickness (draft->result, x) - draft->design->fretboard_thickness };
}

/* y from the centre line, negative towards the bass. */
static RwPoint
on_curve (const RwDraft *draft, const Section *section, double share)
{
  double half = section->half[share > 0], y = half * fabs (sin (share * G_PI_2));

  return (RwPoint){ copysign (y, share),
                    -rw_profile_depth (draft->design->neck_section, half, section->depth, fmin (y, half)) };
}

#define CHORDS 48
#define CARD_BESIDE 12.0
#define CARD_UNDER 14.0

static void
draw_card (RwDraft *draft, const Section *section)
{
  double left = -section->half[0] - CARD_BESIDE, right = section->half[1] + CARD_BESIDE;
  double foot = -section->depth - CARD_UNDER;

  rw_draft_param (draft, NECK, neck_section);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE);
  rw_path_move (draft->sheet, left, 0);
  rw_path_line (draft->sheet, -section->half[0], 0);
  for (int i = -CHORDS; i <= CHORDS; i++)
    {
      RwPoint at = on_curve (draft, section, (double)i / CHORDS);

      rw_path_line (draft->sheet, at.x, at.y);
    }
  rw_path_line (draft->sheet, section->half[1], 0);
  rw_path_line (draft->sheet, right, 0);
  rw_path_line (draft->sheet, right, foot);
  rw_path_line (draft->sheet, left, foot);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet),
           section->fret > 0 ? N_ ("Gauge for fret") : N_ ("Gauge for the heel's start"), section->fret);
}

/* The square blank, and on it what each facet cuts off: first at 45 degrees for a round back, then each
 * corner of that again. */
static void
draw_facets (RwDraft *draft, const Section *section)
{
  double e = draft->design->neck_section, d = section->depth, k1 = rw_profile_facet1 (e),
         k2 = rw_profile_facet2 (e);
  double slope = tan (22.5 * G_PI / 180), step = (k1 - k2) * slope / (1 - slope);

  rw_draft_set (draft, RW_LAYER_NECK, RW_SUBJECT_NONE);
  rw_sheet_box (draft->sheet, RW_PEN_GRAIN, RW_TINT_NONE, -section->half[0], -d, section->half[1], 0);
  for (int side = 0; side < 2; side++)
    {
      double w = section->half[side] * (side != 0 ? 1 : -1);

      rw_name (rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, w, -k1 * d, w * k1, -d), N_ ("First facet"),
               0);
      rw_name (
          rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, w, -k2 * d, w * (1 - step), -(k1 + step) * d),
          N_ ("Second facet"), 0);
      rw_name (
          rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, w * k2, -d, w * (k1 + step), -(1 - step) * d),
          N_ ("Second facet"), 0);
    }
}

/* A size of the gauge: of the row of a fret; where the heel starts there is none, and it is measured on the drawing. */
static void
put_size (RwDraft *draft, const Section *section, RwSlot row, RwSpan span)
{
  if (section->fret > 0)
    {
      rw_span_slot (draft, (RwSlot) (row + section->fret), span);
      return;
    }
  rw_draft_set (draft, RW_LAYER_DIMENSIONS, RW_SUBJECT_NONE);
  rw_sheet_dimension (draft->sheet, span.measure, span.from, span.to, span.offset, RW_FIGURE_WORKED_OUT,
                      hypot (span.to.x - span.from.x, span.to.y - span.from.y), NULL)
      ->rank
      = span.rank;
}

/* The first facet's marks: on the sides, and on the back from the centre line. */
static void
draw_sizes (RwDraft *draft, const Section *section)
{
  double k1 = rw_profile_facet1 (draft->design->neck_section), foot = -section->depth;
  RwPoint bass = { -section->half[0], 0 }, treble = { section->half[1], 0 }, middle = { 0, foot };
  RwPoint side = { treble.x, k1 * foot }, back[2] = { { k1 * bass.x, foot }, { k1 * treble.x, foot } };

  put_size (draft, section, RW_NECK_WIDTH, (RwSpan){ RW_MEASURE_HORIZONTAL, bass, treble, 7, 1, NULL });
  put_size (draft, section, RW_NECK_FACET_SIDE,
            (RwSpan){ RW_MEASURE_VERTICAL, side, treble, CARD_BESIDE + 6, 1, NULL });
  put_size (draft, section, RW_NECK_FACET_BACK_TREBLE,
            (RwSpan){ RW_MEASURE_HORIZONTAL, middle, back[1], -CARD_UNDER - 6, 1, NULL });
  put_size (draft, section, RW_NECK_FACET_BACK_BASS,
            (RwSpan){ RW_MEASURE_HORIZONTAL, back[0], middle, -CARD_UNDER - 6, 1, NULL });
}

static void
draw_gauge (RwDraft *draft, int fret, RwPoint at)
{
  Section section = section_at (draft, fret);
  guint first = draft->sheet->items->len;
  g_autofree char *thick = rw_paper_length (draft, rw_neck_thickness (draft->result, section.x), 1);
  g_autofree char *words
      = fret > 0 ? g_strdup_printf (_("fret %d"), fret) : g_strdup (_("start of the heel"));
  g_autofree char *deep = g_strdup_printf (_("%s thick with the board"), thick);

  draw_card (draft, &section);
  draw_facets (draft, &section);
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, 0, 4, 0, -section.depth - CARD_UNDER + 1),
           N_ ("Centre line of the neck"), 0);
  draw_sizes (draft, &section);
  rw_paper_side (draft, (RwPoint){ 0, 18 }, 0, words);
  rw_paper_words (draft, (RwPoint){ 0, 13 }, deep);
  rw_paper_words (draft, (RwPoint){ section.half[1] + CARD_BESIDE - 1, 3 }, _("treble"));
  rw_paper_words (draft, (RwPoint){ -section.half[0] - CARD_BESIDE + 1, 3 }, _("bass"));
  if (draft->design->build_handed == RW_HANDED_LEFT)
    {
      rw_sheet_mirror (draft->sheet, first);
      rw_sheet_turn (draft->sheet, first, G_PI);
    }
  rw_sheet_move (draft->sheet, first, at.x, at.y);
}

#define BESIDE 46.0
#define BELOW 64.0

RwSheet *
rw_paper_sections (const RwPaperJob *job)
{
  static const int frets[] = { 1, 5, 12, 0 };
  RwDraft draft = rw_paper_begin (job, _("Neck gauges"));
  Section widest = section_at (&draft, 0);
  double across = widest.half[0] + widest.half[1] + BESIDE;
  RwPoint notes;

  for (int i = 0; i < (int)G_N_ELEMENTS (frets); i++)
    if (frets[i] == 0 || draft.result->plan.fret_x[frets[i]] < draft.result->side.heel_start)
      draw_gauge (&draft, frets[i], (RwPoint){ i % 2 * across, -(i / 2) * (widest.depth + BELOW) });
  notes = rw_paper_under (&draft);
  rw_paper_line (&draft, &notes,
                 _("Seen from the body towards the headstock. Cut the curve out and hold the card square "
                     "to the centre line, its upper edge level with the glue line."));
  rw_paper_line (&draft, &notes,
                 _("Thin lines are the facets: plane the first to its marks on side and back, then the "
                     "second, then round. Keep the centre line to the last; stop at heel and headstock."));
  rw_paper_line (&draft, &notes,
                 _("Thickness as made: fret 1 ____________   fret 5 ____________   fret 12 ____________"));
  return rw_paper_end (&draft);
}
