#include "paper_parts.h"

#include <glib/gi18n-lib.h>

/* The headstock's face, unfolded: outline for wood and overlay, posts, strings. */

static void
draw_pricks (RwDraft *draft)
{
  for (int i = 1; i <= draft->result->plan.strings; i++)
    {
      RwPoint at = rw_map_head_flat (draft->result, rw_draft_value (draft, RW_HEADSTOCK_POST_X + i),
                                     rw_draft_value (draft, RW_HEADSTOCK_POST_Y + i));
      g_autofree char *number = g_strdup_printf ("%d", i);

      rw_draft_slot (draft, HEADSTOCK, RW_HEADSTOCK_POST_X + i);
      rw_paper_hole (draft, at, draft->design->headstock_post_hole / 2, N_ ("Post hole"), i);
      rw_draft_slot (draft, TEXT, RW_HEADSTOCK_POST_X + i);
      rw_sheet_text (draft->sheet, at.x - draft->design->headstock_button / 2 - 4, at.y + 1.5,
                     RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, number);
    }
}

static void
write_notes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  g_autofree char *thick = rw_paper_length (draft, design->headstock_thickness, 1);
  g_autofree char *overlay = rw_paper_length (draft, design->headstock_overlay, 1);
  g_autofree char *hole = rw_paper_length (draft, design->headstock_post_hole, 1);
  RwPoint at = rw_paper_under (draft);

  rw_paper_print (draft, &at,
                  _("Seen on the face. The same outline serves the overlay (%s); %s thick in all."),
                  overlay, thick);
  rw_paper_print (draft, &at,
                  _("Post holes %s: measure the tuners' bushings first. Drill from the face into a backing "
                      "board, the blank clamped down."),
                  hole);
  rw_paper_line (draft, &at,
                 _("Tuner bushing as measured: ____________    Thickness as made: ____________"));
}

RwSheet *
rw_paper_headstock (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Headstock"));
  const RwDesign *design = draft.design;
  double half = MAX (design->headstock_width, design->nut_width) / 2;

  rw_draw_head_face (&draft);
  draw_pricks (&draft);
  rw_paper_side (&draft, (RwPoint){ -0.85 * design->headstock_length, half + 4 }, 0, _("treble side"));
  rw_paper_side (&draft, (RwPoint){ -0.85 * design->headstock_length, -half - 7.5 }, 0, _("bass side"));
  rw_paper_side (&draft, (RwPoint){ 37, 0 }, G_PI_2, _("neck"));
  rw_paper_grain (&draft, (RwPoint){ -design->headstock_length * 0.75, 4 },
                  (RwPoint){ -design->headstock_length * 0.45, 4 });
  rw_paper_mirror_across (&draft);
  write_notes (&draft);
  return rw_paper_end (&draft);
}
