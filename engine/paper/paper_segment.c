#include "paper_parts.h"

#include "table/material.h"

#include <glib/gi18n-lib.h>

/* One segment, stave or stack of plies, and what the saw and the gluing need to be told. */

static void
segment_counts (RwDraft *draft, RwPoint *at)
{
  const RwDesign *design = draft->design;
  int each = (int)design->rim_segments, courses = design->rim_course_thickness.count;

  for (int k = 1; k <= courses; k++)
    {
      int wood = design->rim_course_wood.at[MIN (k, design->rim_course_wood.count) - 1];
      g_autofree char *rough = rw_paper_length (draft, rw_draft_value (draft, RW_RIM_COURSE_ROUGH + k), 1);
      g_autofree char *flat = rw_paper_length (draft, design->rim_course_thickness.at[k - 1], 1);

      rw_paper_print (draft, at, _("Course %d from the head side: %d of %s, %s thick, flattened to %s"), k,
                      each, _ (rw_woods[wood].label), rough, flat);
    }
  rw_paper_print (draft, at, _("Saw %d in all, and one or two more of each thickness for spoiled ones."),
                  each * courses);
}

static void
segment_saw (RwDraft *draft, RwPoint *at)
{
  g_autofree char *feed = rw_paper_length (draft, rw_draft_value (draft, RW_RIM_SEGMENT_FEED), 1);
  g_autofree char *strip = rw_paper_length (draft, rw_draft_value (draft, RW_RIM_COURSE_STRIP), 0);
  g_autofree char *mitre = rw_paper_degrees (draft, rw_draft_value (draft, RW_RIM_SEGMENT_MITRE));

  rw_paper_print (draft, at,
                  _("Saw to a stop, mitre %s at each end, the strip turned over between cuts; it advances "
                      "%s for each segment. One course takes %s of strip."),
                  mitre, feed, strip);
}

/* How the ring closes: what is told of the error to expect, and what to do about it. */
static void
closing (RwDraft *draft, RwPoint *at)
{
  const RwDesign *design = draft->design;
  g_autofree char *gap = rw_paper_length (draft, rw_draft_value (draft, RW_RIM_JOINT_GAP), 1);
  g_autofree char *error = rw_paper_degrees (draft, design->rim_mitre_error);

  rw_paper_print (draft, at,
                  _("Saw and close a trial ring of %d in scrap first: the %d mitred ends must add up to "
                      "360°. An error of %s in each cut opens the last joint by %s."),
                  (int)design->rim_segments, 2 * (int)design->rim_segments, error, gap);
  if ((int)design->rim_segments % 2 == 0)
    {
      g_autofree char *trim = rw_paper_length (draft, rw_draft_value (draft, RW_RIM_HALF_TRIM), 1);

      rw_paper_print (draft, at,
                      _("Glue two half rings, sand their ends flat together on a straight board (about %s "
                          "comes off at the worse edge), then join the halves."),
                      trim);
    }
  rw_paper_line (draft, at,
                 _("Measured: sum of the trial ring's angles ____________   long edge ____________   "
                     "thickness ____________"));
}

static void
caution (RwDraft *draft, RwPoint *at)
{
  rw_paper_line (draft, at,
                 _("Short pieces at a saw: clamp them or use a sled, keep hands clear, let the stop fall "
                     "free before the cut. The saw maker's manual comes first."));
}

#define EDGE_BELOW 24.0

static void
draw_segments (RwDraft *draft, RwPoint *notes)
{
  double width = draft->design->rim_strip_width, outer = rw_draft_value (draft, RW_RIM_SEGMENT_OUTER_EDGE);

  width = width > 0 ? width : rw_draft_value (draft, RW_RIM_SEGMENT_MIN_WIDTH);
  rw_draw_segment (draft, (RwPoint){ 0, 0 }, EDGE_BELOW);
  rw_paper_grain (draft, (RwPoint){ outer * 0.55, -width * 0.48 }, (RwPoint){ outer * 0.85, -width * 0.48 });
  rw_paper_side (draft, (RwPoint){ outer / 2, 22 }, 0, _("outside of the rim"));
  *notes = rw_paper_under (draft);
  segment_counts (draft, notes);
  segment_saw (draft, notes);
  closing (draft, notes);
}

static void
draw_staves (RwDraft *draft, RwPoint *notes)
{
  double outer = rw_draft_value (draft, RW_RIM_SEGMENT_OUTER_EDGE);
  double length = rw_draft_value (draft, RW_RIM_STAVE_LENGTH), foot;
  g_autofree char *mitre = rw_paper_degrees (draft, rw_draft_value (draft, RW_RIM_SEGMENT_MITRE));

  rw_draw_segment (draft, (RwPoint){ 0, 0 }, EDGE_BELOW);
  *notes = rw_paper_under (draft);
  foot = rw_sheet_extent (draft->sheet).y0;
  rw_paper_side (draft, (RwPoint){ outer / 2, 22 }, 0, _("outside of the rim"));
  rw_paper_grain (draft, (RwPoint){ outer / 2, foot + length * 0.2 },
                  (RwPoint){ outer / 2, foot + length * 0.8 });
  rw_paper_print (draft, notes, _("%d staves, bevelled %s on each long edge."),
                  (int)draft->design->rim_segments, mitre);
  closing (draft, notes);
}

static void
ply_lengths (RwDraft *draft, RwPoint *at)
{
  int count = (int)rw_draft_value (draft, RW_RIM_PLY_COUNT);
  g_autofree char *scarf = rw_paper_length (draft, draft->design->rim_ply_scarf, 0);

  rw_paper_print (draft, at, _("%d plies, lengths counted from the inside, scarf of %s included:"), count,
                  scarf);
  for (int k = 1; k <= count && k <= RW_PLIES_MAX; k++)
    {
      g_autofree char *length = rw_paper_length (draft, rw_draft_value (draft, RW_RIM_PLY_LENGTH + k), 1);

      rw_paper_print (draft, at, _("ply %d: %s"), k, length);
    }
  rw_paper_line (draft, at,
                 _("Steam and hot water scald: vent the box, never seal it, and wear gloves. Stagger the "
                     "scarfs round the rim."));
}

/* The ply's edge, with the scarf at its end. */
static void
draw_ply (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double thick = design->rim_ply_thickness, scarf = design->rim_ply_scarf, shown = scarf + 60;
  const RwPoint corners[] = { { 0, 0 }, { shown, 0 }, { shown, -thick }, { scarf, -thick } };

  rw_draft_param (draft, RIM, rim_ply_scarf);
  rw_name (
      rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_LIGHT_WOOD, corners, G_N_ELEMENTS (corners)),
      N_ ("Ply"), 0);
  rw_span_param (draft, RW_P_rim_ply_scarf,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { 0, 0 }, { scarf, 0 }, 8, 1, NULL });
  rw_span_param (draft, RW_P_rim_ply_thickness,
                 (RwSpan){ RW_MEASURE_VERTICAL, { shown, -thick }, { shown, 0 }, 8, 1, NULL });
  rw_paper_grain (draft, (RwPoint){ 0, -thick - 8 }, (RwPoint){ 40, -thick - 8 });
}

static const char *
card_title (int construction)
{
  switch (construction)
    {
    case RW_RIM_STAVES:
      return _("Stave card");
    case RW_RIM_PLIES:
      return _("Ply card");
    case RW_RIM_SEGMENTS:
    default:
      return _("Segment card");
    }
}

RwSheet *
rw_paper_segment (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, card_title (job->result->used.rim_construction));
  RwPoint notes = { 0, -draft.design->rim_ply_thickness - 20 };

  if (draft.design->rim_construction == RW_RIM_SEGMENTS)
    draw_segments (&draft, &notes);
  else if (draft.design->rim_construction == RW_RIM_STAVES)
    draw_staves (&draft, &notes);
  else
    {
      draw_ply (&draft);
      ply_lengths (&draft, &notes);
    }
  if (draft.design->rim_construction != RW_RIM_PLIES)
    caution (&draft, &notes);
  return rw_paper_end (&draft);
}
