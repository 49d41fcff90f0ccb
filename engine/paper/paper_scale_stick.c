#include "paper_parts.h"

#include <glib/gi18n-lib.h>

/* A stick with every fret's place marked from one end, to be glued to a straight edge or copied with a knife.
 * Its left end is the nut line. */

#define WIDTH 28.0
#define PAST_BRIDGE 12.0
#define TICK 12.0
#define LONG_TICK 18.0
#define ROOM 6.0 /* nearer places have their numbers in two rows */

static void
draw_place (RwDraft *draft, int fret)
{
  double place = draft->result->plan.fret_x[fret], before = draft->result->plan.fret_x[fret - 1];
  double length = fret % 12 == 0 ? LONG_TICK : TICK;
  double raised = place - before < ROOM && fret % 2 == 0 ? 4.5 : 0;
  g_autofree char *number = g_strdup_printf ("%d", fret), *figure = rw_paper_figure (draft, place, 2);

  rw_draft_slot (draft, FRETBOARD, RW_FRETS_POSITION + fret);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_EDGE, place, 0, place, length), N_ ("Fret"), fret);
  rw_draft_slot (draft, TEXT, RW_FRETS_POSITION + fret);
  rw_sheet_text (draft->sheet, place, WIDTH + 2 + raised, RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, number);
  rw_sheet_text (draft->sheet, place + 1.2, -2.5, RW_ALIGN_END, RW_LETTERS_SMALL, figure)->turn = G_PI_2;
}

static void
draw_bridge (RwDraft *draft)
{
  double length = draft->design->scale_length;
  g_autofree char *figure = rw_paper_figure (draft, length, 2);

  rw_draft_param (draft, BRIDGE, scale_length);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_OUTLINE, length, 0, length, WIDTH),
           N_ ("Theoretical bridge line"), 0);
  rw_sheet_text (draft->sheet, length + 1.2, -2.5, RW_ALIGN_END, RW_LETTERS_SMALL, figure)->turn = G_PI_2;
  rw_paper_side (draft, (RwPoint){ length, WIDTH + 2 }, 0, _("bridge"));
}

static void
write_notes (RwDraft *draft, RwPoint at)
{
  g_autofree char *half = rw_paper_length (draft, draft->design->scale_length / 2, 2);

  rw_paper_print (draft, &at,
                  _("All places run from the nut line, none from the fret before. Fret 12 stands at half "
                      "the scale, %s: check it with a rule first."),
                  half);
  if (draft->design->frets_slots == RW_SLOTS_OWN)
    rw_paper_line (draft, &at,
                   _("Each string has slots of its own, which a straight stick can't mark: the places are those of equal "
                     "steps. Saw by the sheet of the fretboard."));
  rw_paper_line (draft, &at,
                 _("The bridge line is the theoretical one; the bridge goes behind it by its compensation "
                     "when the strings are on."));
  if (draft->design->scale_square_to == RW_SQUARE_TO_NECK)
    rw_paper_line (draft, &at,
                   _("Lay the stick along the neck's own centre line: fret lines stand square to it."));
  else
    rw_paper_line (draft, &at, _("Lay the stick along the strings' axis: fret lines stand square to it."));
}

RwSheet *
rw_paper_scale_stick (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Scale stick"));
  double end = draft.design->scale_length + PAST_BRIDGE;

  rw_draft_param (&draft, FRETBOARD, scale_length);
  rw_name (rw_sheet_box (draft.sheet, RW_PEN_OUTLINE, RW_TINT_PAPER, 0, 0, end, WIDTH), N_ ("Scale stick"),
           0);
  for (int fret = 1; fret <= draft.result->plan.last; fret++)
    draw_place (&draft, fret);
  draw_bridge (&draft);
  rw_paper_mark (&draft, (RwPoint){ 0, WIDTH }, 0, 1);
  rw_paper_side (&draft, (RwPoint){ -3, WIDTH / 2 }, G_PI_2, _("nut"));
  write_notes (&draft, (RwPoint){ 0, -24 });
  return rw_paper_end (&draft);
}
