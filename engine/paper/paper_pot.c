#include "paper_parts.h"

#include <glib/gi18n-lib.h>

/* Section through the pot at a shoe. */

RwSheet *
rw_paper_pot (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Pot section"));
  double outer = draft.design->rim_outer_diameter / 2;
  g_autofree char *thick = rw_paper_length (&draft, draft.design->hoop_thickness, 1);
  g_autofree char *high = rw_paper_length (&draft, draft.design->hoop_height, 1);
  g_autofree char *rod = rw_paper_length (&draft, draft.design->hooks_rod, 2);
  RwPoint notes;

  rw_draw_pot (&draft);
  rw_paper_side (&draft, (RwPoint){ outer - 30, 22 }, 0, _("head side"));
  rw_paper_side (&draft, (RwPoint){ outer - 46, -draft.design->rim_height / 2 }, G_PI_2, _("inside"));
  notes = rw_paper_under (&draft);
  rw_paper_print (&draft, &notes, _("Hoop %s thick, %s high; hook rod %s."), thick, high, rod);
  rw_paper_line (&draft, &notes,
                 _("Hook as tightened. Measure a head, the hoop and one finished hook and shoe before the "
                     "holes are drilled."));
  rw_paper_line (&draft, &notes,
                 _("Measured: head band bore ____________   collar ____________   hoop height ____________"));
  rw_paper_line (&draft, &notes, _("Shoe stand-off ____________   hook leg ____________"));
  return rw_paper_end (&draft);
}
