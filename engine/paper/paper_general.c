#include "paper_parts.h"

#include <glib/gi18n-lib.h>

/* The whole instrument, fitted on a page: the drawing of the window, with the words that tell its sides. */

#define BESIDE_NECK 48.0 /* from the strings' axis to the words over and under the neck */
#define PAST_TAIL 26.0

/* A left-handed plan is turned over by now, its words are not. */
static void
draw_sides (RwDraft *draft)
{
  double rim = draft->design->rim_outer_diameter / 2;
  double x = -rim - 0.4 * rw_draft_value (draft, RW_NECK_NUT_TO_RIM);
  gboolean left = draft->design->build_handed == RW_HANDED_LEFT;

  rw_paper_words (draft, (RwPoint){ x, BESIDE_NECK }, left ? _("bass side") : _("treble side"));
  rw_paper_words (draft, (RwPoint){ x, -BESIDE_NECK }, left ? _("treble side") : _("bass side"));
  rw_paper_words (draft, (RwPoint){ rw_pot_reach (draft->result) + PAST_TAIL, 6 }, _("tail"));
}

RwSheet *
rw_paper_general (const RwPaperJob *job)
{
  RwDraft draft = { .result = job->result, .design = &job->result->used, .measured = job->measured };

  if (job->page > 0)
    return NULL;
  draft.sheet = rw_draw (RW_VIEW_WHOLE, job->result, job->measured, job->style);
  draw_sides (&draft);
  return rw_paper_end (&draft);
}
