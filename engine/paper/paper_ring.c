#include "paper_parts.h"

#include <glib/gi18n-lib.h>

/* The whole ring of one course, to put the segments down on while they are glued: joints and the circles to
 * turn to.  Pot frame; a left-handed build is mirrored, so that its turned courses are too. */

/* In the middle of the upper half, where a page is likely to show them whole; under a small ring. */
#define NOTES_AT ((RwPoint){ -78, 60 })
#define NOTES_ROOM 105.0 /* inside radius that they take */

static void
write_notes (RwDraft *draft)
{
  gboolean inside = rw_draft_value (draft, RW_RIM_INNER_DIAMETER) / 2 > NOTES_ROOM;
  RwPoint at = inside ? NOTES_AT : rw_paper_under (draft);
  g_autofree char *corner = rw_paper_length (draft, rw_draft_value (draft, RW_RIM_CORNER_DIAMETER), 1);
  g_autofree char *speed
      = rw_quantity_write (rw_draft_value (draft, RW_RIM_SPINDLE_LIMIT), "1/min", RW_UNITS_MM, 0, '.');

  rw_paper_line (draft, &at, _("Seen from the head side. Lay the sheet on a flat caul under clear film."));
  if (draft->design->rim_construction == RW_RIM_SEGMENTS)
    rw_paper_line (draft, &at,
                   _("This is the first course; the thin dashed joints are those of the next."));
  rw_paper_print (draft, &at,
                  _("Corners swing %s before turning: keep the lathe at or under %s turns a minute, and "
                      "under what its maker's manual allows."),
                  corner, speed);
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

RwSheet *
rw_paper_ring (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Ring to glue on"));
  double reach = rw_draft_value (&draft, RW_RIM_CORNER_DIAMETER) / 2 + 12;

  if (draft.design->rim_construction == RW_RIM_PLIES)
    {
      rw_sheet_free (draft.sheet);
      return NULL;
    }
  rw_draw_ring (&draft);
  draw_axes (&draft, reach);
  rw_paper_side (&draft, (RwPoint){ -reach - 8, 4 }, 0, _("neck"));
  rw_paper_side (&draft, (RwPoint){ reach + 8, 4 }, 0, _("tail"));
  rw_paper_side (&draft, (RwPoint){ 14, reach - 4 }, 0, _("treble"));
  rw_paper_side (&draft, (RwPoint){ 14, -reach + 4 }, 0, _("bass"));
  rw_paper_mirror_across (&draft);
  write_notes (&draft);
  return rw_paper_end (&draft);
}
