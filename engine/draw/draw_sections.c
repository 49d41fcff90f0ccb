#include "draw_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#include "model/profile.h"

/* Sections of the neck, seen from the body towards the headstock: the board on the wood, the channel for the
 * rod, the curve of the back and the facets that are planed before it. */

/* The last one stands where the heel starts. */
static const int frets[] = { 1, 5, 7, 12, 0 };

#define HATCH 2.6
/* Three in a row, with room for dimensions beside and below. */
#define COLUMNS 3
#define BESIDE 46.0
#define BELOW 54.0

RwPoint
rw_section_origin (const RwResult *result, int section)
{
  const RwPlan *plan = &result->plan;
  double x = result->side.heel_start;

  return (RwPoint){ section % COLUMNS * (rw_plan_treble (plan, x) - rw_plan_bass (plan, x) + BESIDE),
                    -(section / COLUMNS) * (rw_neck_thickness (result, x) + BELOW) };
}

typedef struct
{
  RwPoint origin; /* on the sheet: the centre line at the glue line */
  double x;       /* along the neck */
  int fret;       /* 0: where the heel starts */
  double half[2]; /* of the board from the centre line: bass, treble */
  double depth;   /* of the wood under the glue line */
  double e;
  int hand; /* side of the treble: 1 or -1 */
} Section;

static Section
section_of (const RwDraft *draft, int index)
{
  const RwPlan *plan = &draft->result->plan;
  double x = frets[index] > 0 ? plan->fret_x[frets[index]] : draft->result->side.heel_start;
  double centre = rw_plan_centre (plan, x);

  return (Section){
    .origin = rw_section_origin (draft->result, index),
    .x = x,
    .fret = frets[index],
    .half = { centre - rw_plan_bass (plan, x), rw_plan_treble (plan, x) - centre },
    .depth = rw_neck_thickness (draft->result, x) - draft->design->fretboard_thickness,
    .e = draft->design->neck_section,
    .hand = draft->design->build_handed == RW_HANDED_LEFT ? -1 : 1,
  };
}

/* y from the centre line, z over the glue line; side 0 the bass half, 1 the treble half, both with y >= 0. */
static RwPoint
on_sheet (const Section *section, int side, double y, double z)
{
  return (RwPoint){ section->origin.x + section->hand * (side != 0 ? y : -y), section->origin.y + z };
}

/* ---- what is cut ---- */

#define CURVE_CHORDS 24

static int
outline (const Section *section, RwPoint *points)
{
  int count = 0;

  for (int side = 0; side < 2; side++)
    for (int i = 0; i <= CURVE_CHORDS; i++)
      {
        /* Close together where the curve turns, at the edges. */
        double t = G_PI_2 * (side != 0 ? i : CURVE_CHORDS - i) / CURVE_CHORDS,
               y = section->half[side] * sin (t);

        points[count++] = on_sheet (section, side, y,
                                    -rw_profile_depth (section->e, section->half[side], section->depth, y));
      }
  return count;
}

static gboolean
has_channel (const RwDraft *draft, const Section *section)
{
  const RwDesign *design = draft->design;

  return design->neck_rod_present == RW_YES && section->x >= design->neck_rod_start
         && section->x <= draft->result->side.nut_to_rim - design->neck_rod_end;
}

static void
draw_channel (RwDraft *draft, const Section *section)
{
  double half = draft->design->neck_rod_width / 2, depth = draft->design->neck_rod_depth;

  if (!has_channel (draft, section))
    return;
  rw_draft_param (draft, NECK, neck_rod_depth);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_PAPER, section->origin.x - half,
                         section->origin.y - depth, section->origin.x + half, section->origin.y),
           N_ ("Channel for the rod"), 0);
}

static void
draw_wood (RwDraft *draft, const Section *section)
{
  RwPoint points[2 * CURVE_CHORDS + 2];
  int count = outline (section, points);
  double board = draft->design->fretboard_thickness;
  RwPoint low = on_sheet (section, 0, section->half[0], 0),
          high = on_sheet (section, 1, section->half[1], board);
  const RwPoint corners[] = { low, { high.x, low.y }, high, { low.x, high.y } };

  rw_draft_param (draft, NECK, neck_section);
  rw_sheet_polygon (draft->sheet, RW_PEN_NONE, RW_TINT_LIGHT_WOOD, points, count);
  rw_hatch (draft, points, count, HATCH, 1);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, points, count),
           section->fret > 0 ? N_ ("Neck at fret") : N_ ("Neck at the heel's start"), section->fret);
  draw_channel (draft, section);
  rw_draft_param (draft, FRETBOARD, fretboard_thickness);
  rw_sheet_polygon (draft->sheet, RW_PEN_NONE, RW_TINT_DARK_WOOD, corners, 4);
  rw_hatch (draft, corners, 4, HATCH, -1);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, corners, 4), N_ ("Fretboard"), 0);
}

/* ---- facets ---- */

/* In one half, in shares of half width and depth: the first facet cuts side and back at k1; each second one
 * cuts its face at k2, its normal 22.5 degrees off that face's. */
static void
draw_facets (RwDraft *draft, const Section *section, int side)
{
  double w = section->half[side], d = section->depth;
  double k1 = rw_profile_facet1 (section->e), k2 = rw_profile_facet2 (section->e);
  double slope = tan (22.5 * G_PI / 180), step = (k1 - k2) * slope / (1 - slope);
  RwPoint first[2] = { on_sheet (section, side, w, -k1 * d), on_sheet (section, side, k1 * w, -d) };
  RwPoint second[2][2] = {
    { on_sheet (section, side, w, -k2 * d), on_sheet (section, side, w * (1 - step), -(k1 + step) * d) },
    { on_sheet (section, side, k2 * w, -d), on_sheet (section, side, w * (k1 + step), -(1 - step) * d) },
  };

  rw_draft_slot (draft, NECK, RW_NECK_FACET_SIDE + section->fret);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, first[0].x, first[0].y, first[1].x, first[1].y),
           N_ ("First facet"), 0);
  rw_draft_slot (draft, NECK, RW_NECK_FACET2_SIDE + section->fret);
  for (int i = 0; i < 2; i++)
    rw_name (rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, second[i][0].x, second[i][0].y, second[i][1].x,
                            second[i][1].y),
             N_ ("Second facet"), 0);
}

/* The square blank that the facets are marked on. */
static void
draw_square (RwDraft *draft, const Section *section)
{
  RwPoint left = on_sheet (section, 0, section->half[0], 0),
          right = on_sheet (section, 1, section->half[1], 0);
  double foot = section->origin.y - section->depth;
  const RwPoint points[] = { left, { left.x, foot }, { right.x, foot }, right };

  rw_draft_set (draft, RW_LAYER_NECK, RW_SUBJECT_NONE);
  rw_name (rw_sheet_polyline (draft->sheet, RW_PEN_PHANTOM, points, 4), N_ ("Before carving"), 0);
}

/* ---- dimensions ---- */

static void
facet_sizes (RwDraft *draft, const Section *section)
{
  static const RwSlot back[2] = { RW_NECK_FACET_BACK_BASS, RW_NECK_FACET_BACK_TREBLE };
  static const RwSlot back2[2] = { RW_NECK_FACET2_BACK_BASS, RW_NECK_FACET2_BACK_TREBLE };
  double k1 = rw_profile_facet1 (section->e), k2 = rw_profile_facet2 (section->e), d = section->depth;
  RwPoint foot = on_sheet (section, 1, 0, -d), edge = on_sheet (section, 1, section->half[1], 0);
  double out = section->hand;

  rw_span_slot (draft, RW_NECK_FACET2_SIDE + section->fret,
                (RwSpan){ RW_MEASURE_VERTICAL, { edge.x, edge.y - k2 * d }, edge, out * 6, 3, NULL });
  rw_span_slot (draft, RW_NECK_FACET_SIDE + section->fret,
                (RwSpan){ RW_MEASURE_VERTICAL, { edge.x, edge.y - k1 * d }, edge, out * 13, 2, NULL });
  for (int side = 0; side < 2; side++)
    {
      rw_span_slot (draft, back2[side] + section->fret,
                    (RwSpan){ RW_MEASURE_HORIZONTAL, foot,
                              on_sheet (section, side, k2 * section->half[side], -d), -6, 3, NULL });
      rw_span_slot (draft, back[side] + section->fret,
                    (RwSpan){ RW_MEASURE_HORIZONTAL, foot,
                              on_sheet (section, side, k1 * section->half[side], -d), -13, 2, NULL });
    }
}

static void
section_sizes (RwDraft *draft, const Section *section)
{
  double board = draft->design->fretboard_thickness;
  RwPoint bass = on_sheet (section, 0, section->half[0], board),
          treble = on_sheet (section, 1, section->half[1], board);
  RwSpan thick = {
    RW_MEASURE_VERTICAL, { bass.x, section->origin.y - section->depth }, bass, -8 * section->hand, 1, NULL
  };

  if (section->fret == 0)
    {
      rw_span_param (draft, RW_P_neck_thickness_last, thick);
      return;
    }
  rw_span_slot (draft, RW_NECK_WIDTH + section->fret,
                (RwSpan){ RW_MEASURE_HORIZONTAL, bass, treble, 7, 1, NULL });
  rw_span_slot (draft, RW_NECK_THICKNESS + section->fret, thick);
  facet_sizes (draft, section);
}

/* Over the dimension of the width, paper mm. */
#define CAPTION_OVER 15.0

static void
draw_caption (RwDraft *draft, const Section *section)
{
  g_autofree char *words
      = section->fret > 0 ? g_strdup_printf (_("Fret %d"), section->fret) : g_strdup (_("Start of the heel"));

  rw_caption (draft, (RwPoint){ section->origin.x, section->origin.y + draft->design->fretboard_thickness },
              CAPTION_OVER, words);
}

static void
draw_section (RwDraft *draft, int index)
{
  Section section = section_of (draft, index);
  double board = draft->design->fretboard_thickness;
  RwPoint top = on_sheet (&section, 0, 0, board + 4), foot = on_sheet (&section, 0, 0, -section.depth - 4);

  draw_wood (draft, &section);
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, top.x, top.y, foot.x, foot.y),
           N_ ("Centre line of the neck"), 0);
  if (section.x <= draft->result->side.heel_start)
    {
      draw_square (draft, &section);
      draw_facets (draft, &section, 0);
      draw_facets (draft, &section, 1);
    }
  section_sizes (draft, &section);
  draw_caption (draft, &section);
}

/* The sizes of the channel are told once. */
static void
channel_sizes (RwDraft *draft)
{
  Section section = section_of (draft, 0);
  double half = draft->design->neck_rod_width / 2, depth = draft->design->neck_rod_depth;
  RwPoint wall = { section.origin.x + half, section.origin.y - depth * 0.4 },
          floor = { section.origin.x - half * 0.4, section.origin.y - depth };
  double level = section.origin.y - section.depth - 18;

  if (!has_channel (draft, &section))
    return;
  rw_note_param (draft, RW_P_neck_rod_width,
                 (RwNote){ wall, { section.origin.x + 20, level }, 2, N_ ("channel %s wide") });
  rw_note_param (draft, RW_P_neck_rod_depth,
                 (RwNote){ floor, { section.origin.x - 20, level }, 2, N_ ("channel %s deep") });
}

void
rw_draw_sections (RwDraft *draft)
{
  for (int i = 0; i < (int)G_N_ELEMENTS (frets); i++)
    draw_section (draft, i);
  channel_sizes (draft);
}
