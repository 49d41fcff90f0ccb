#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Where the strings' slots go in nut and bridge.  Both are seen from the tail, towards the headstock, so that
 * the treble side is on the right. */

typedef struct
{
  RwSlot row;          /* places of the strings */
  double half, height; /* of the block */
  double middle;       /* of the block, as the row counts */
} Block;

static void
draw_slot (RwDraft *draft, const Block *block, int string, double first)
{
  double place = rw_draft_value (draft, block->row + string), x = place - block->middle;
  double wire = draft->design->strings_set.at[string - 1].outer_mm;
  g_autofree char *number = g_strdup_printf ("%d", string),
                  *figure = rw_paper_figure (draft, first - place, 2);

  if (!isfinite (place))
    return;
  rw_draft_slot (draft, BRIDGE, block->row + string);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_EDGE, x, block->height - 5, x, block->height + 3),
           N_ ("String"), string);
  rw_sheet_circle (draft->sheet, RW_PEN_EDGE, RW_TINT_METAL, x, block->height + wire / 2, wire / 2);
  rw_draft_slot (draft, TEXT, block->row + string);
  rw_sheet_text (draft->sheet, x, block->height + 5, RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, number);
  rw_sheet_text (draft->sheet, x + 1.2, -2.5, RW_ALIGN_END, RW_LETTERS_SMALL, figure)->turn = G_PI_2;
}

static void
draw_block (RwDraft *draft, const Block *block, const char *words)
{
  double first = rw_draft_value (draft, block->row + 1);

  rw_draft_set (draft, RW_LAYER_BRIDGE, RW_SUBJECT_PARAM (nut_width));
  rw_name (
      rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, -block->half, 0, block->half, block->height),
      words, 0);
  for (int i = 1; i <= draft->result->plan.strings; i++)
    draw_slot (draft, block, i, first);
  rw_paper_side (draft, (RwPoint){ 0, block->height + 13 }, 0, _(words));
  rw_paper_words (draft, (RwPoint){ block->half + 10, block->height / 2 }, _("treble"));
  rw_paper_words (draft, (RwPoint){ -block->half - 10, block->height / 2 }, _("bass"));
}

static void
draw_feet (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  int feet = design->bridge_feet > 2.5 ? 3 : 2;

  rw_draft_param (draft, BRIDGE, bridge_foot_spread);
  for (int i = 0; i < feet; i++)
    {
      double x = design->bridge_foot_spread * ((double)i / (feet - 1) - 0.5),
             half = design->bridge_foot_length / 2;

      rw_name (rw_sheet_line (draft->sheet, RW_PEN_OUTLINE, x - half, -0.25, x + half, -0.25),
               N_ ("Foot of the bridge"), i + 1);
    }
}

static void
write_notes (RwDraft *draft, RwPoint at)
{
  const RwDesign *design = draft->design;
  gboolean short_apart = draft->result->plan.has_short;
  g_autofree char *height = rw_paper_length (draft, rw_draft_value (draft, RW_BRIDGE_HEIGHT), 1);
  g_autofree char *over = rw_paper_length (draft, design->nut_string_height, 2);
  g_autofree char *crown
      = rw_paper_length (draft, design->frets_count > 0.5 ? design->frets_crown_height : 0, 2);

  rw_paper_line (
      draft, &at,
      _("Figures run from the first string, middle to middle. Strings are drawn at their gauges."));
  rw_paper_print (draft, &at,
                  _("Nut: undersides of the strings %s over the plane of the fret crowns, which stand %s "
                      "over the board; slope the slots down to the posts."),
                  over, crown);
  rw_paper_print (draft, &at,
                  _("Bridge: %s high at the strings, feet included, measured with the head tight; lower it "
                      "only when the strings have settled."),
                  height);
  if (short_apart)
    rw_paper_line (draft, &at,
                   _("The short string has no place in the nut: its own stands beside its start fret."));
  rw_paper_line (draft, &at,
                 _("Measured: bridge height ____________   string height at the nut ____________"));
}

RwSheet *
rw_paper_bridge_nut (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Nut and bridge slots"));
  const RwDesign *design = draft.design;
  double crown = design->frets_count > 0.5 ? design->frets_crown_height : 0;
  Block nut
      = { RW_STRINGS_NUT_Y, design->nut_width / 2,
          design->fretboard_thickness + crown + design->nut_string_height, draft.result->plan.nut_middle };
  Block bridge
      = { RW_STRINGS_BRIDGE_Y,
          fmax (design->bridge_foot_spread + design->bridge_foot_length, design->bridge_spread + 8) / 2,
          rw_draft_value (&draft, RW_BRIDGE_HEIGHT), 0 };
  guint first;

  draw_block (&draft, &bridge, N_ ("Bridge"));
  draw_feet (&draft);
  first = draft.sheet->items->len;
  draw_block (&draft, &nut, N_ ("Nut"));
  rw_sheet_move (draft.sheet, first, 0, bridge.height + 48);
  rw_paper_mirror_along (&draft);
  write_notes (&draft, (RwPoint){ -bridge.half - 14, -22 });
  return rw_paper_end (&draft);
}
