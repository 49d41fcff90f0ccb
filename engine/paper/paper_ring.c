#include "paper_parts.h"

#include <glib/gi18n-lib.h>

/* The whole ring of one course, to put the segments down on while they are glued: joints and the circles to
 * turn to.  Pot frame; a left-handed build is mirrored, so that its turned courses are too. */

/* Within the ring, on its treble half towards the neck, where the first page is likely to show them whole;
 * under a small ring. */
#define NOTES_ROOM 105.0 /* inside radius that they take */
#define NOTES_WIDE 72.0
#define NOTES_HIGH 60.0

static void
write_notes (RwDraft *draft)
{
  gboolean inside = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2 > NOTES_ROOM;
  double wide = inside ? NOTES_WIDE : 2 * NOTES_WIDE;
  RwPoint at = inside ? (RwPoint){ -NOTES_WIDE - 8, NOTES_HIGH } : rw_paper_under (draft);
  g_autofree char *corner = rw_paper_length (draft, rw_draft_value (draft, RW_RIM_CORNER_DIAMETER), 1);
  g_autofree char *speed
      = rw_quantity_write (rw_draft_value (draft, RW_RIM_SPINDLE_LIMIT), "1/min", RW_UNITS_MM, 0, '.');
  g_autofree char *limit = g_strdup_printf (_("Corners swing %s before turning: keep the lathe at or under "
                                               "%s turns a minute, and under what its maker's "
                                               "manual allows."),
                                            corner, speed);

  rw_paper_line_within (draft, &at, wide,
                        _("Seen from the head side. Lay the sheet on a flat caul under clear film."));
  if (draft->design->rim_construction == RW_RIM_SEGMENTS)
    rw_paper_line_within (draft, &at, wide,
                          _("This is the first course; the thin dashed joints are those of the next."));
  rw_paper_line_within (draft, &at, wide, limit);
}

/* The axes' ends, which leave the middle free for notes, and the centre. */
static void
draw_axes (RwDraft *draft, double reach)
{
  double from = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2 - 20;

  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  for (int side = -1; side <= 1; side += 2)
    {
      rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, side * from, 0, side * reach, 0),
               N_ ("Axis of the strings"), 0);
      rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, 0, side * from, 0, side * reach),
               N_ ("Cross axis"), 0);
    }
  rw_cross (draft, (RwPoint){ 0, 0 }, 8);
}

/* What it is turned to: the circles, told within the ring on its bass half. */
static void
draw_sizes (RwDraft *draft)
{
  double inner = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2, outer = draft->design->rim_outer_diameter / 2;

  rw_note_param (draft, RW_P_rim_outer_diameter,
                 (RwNote){ rw_place_round (1.22 * G_PI, outer, 0), rw_place_round (1.22 * G_PI, inner * 0.6, 0), 1,
                           RW_DIAMETER });
  rw_note_slot (draft, RW_RIM_INNER_DIAMETER,
                (RwNote){ rw_place_round (1.72 * G_PI, inner, 0), rw_place_round (1.72 * G_PI, inner * 0.6, 0), 1,
                          RW_DIAMETER });
}

/* Words stand within the ring, so that it takes no more pages than it must. */
#define WORDS_IN 20.0
#define PAST_CORNERS 3.0

RwSheet *
rw_paper_ring (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Ring to glue on"));
  double reach = rw_draft_value (&draft, RW_RIM_CORNER_DIAMETER) / 2 + PAST_CORNERS;
  double inner = rw_draft_value (&draft, RW_RIM_INNER_DIAMETER) / 2;

  if (draft.design->rim_construction == RW_RIM_PLIES)
    {
      rw_sheet_free (draft.sheet);
      return NULL;
    }
  rw_draw_ring (&draft);
  draw_axes (&draft, reach);
  draw_sizes (&draft);
  rw_paper_side (&draft, (RwPoint){ -inner + WORDS_IN, 3 }, 0, _("neck"));
  rw_paper_side (&draft, (RwPoint){ inner - WORDS_IN, 3 }, 0, _("tail"));
  rw_paper_side (&draft, (RwPoint){ 16, inner - WORDS_IN }, 0, _("treble"));
  rw_paper_side (&draft, (RwPoint){ 16, -inner + WORDS_IN }, 0, _("bass"));
  rw_paper_mirror_across (&draft);
  write_notes (&draft);
  return rw_paper_end (&draft);
}
