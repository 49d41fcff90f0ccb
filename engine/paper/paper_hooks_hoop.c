#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Hooks and hoop: the hook as bent, its rod as cut with the places of the bend, former sizes, and notches. */

/* ---- the rod before bending ---- */

static void
draw_tick (RwDraft *draft, RwPoint at, double x, const char *words)
{
  double rod = draft->design->hooks_rod;
  RwItem *text;

  rw_draft_set (draft, RW_LAYER_HOOKS, RW_SUBJECT_NONE);
  rw_sheet_line (draft->sheet, RW_PEN_EDGE, at.x + x, at.y - rod / 2 - 2, at.x + x, at.y + rod / 2 + 2);
  rw_draft_set (draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  text = rw_sheet_text (draft->sheet, at.x + x + 1.2, at.y + rod / 2 + 4, RW_ALIGN_START, RW_LETTERS_SMALL,
                        words);
  text->turn = G_PI_2;
}

/* The rod along x from the claw's end; at: its axis at that end. */
static void
draw_blank (RwDraft *draft, RwPoint at)
{
  const RwDesign *design = draft->design;
  double rod = design->hooks_rod, cut = rw_draft_value (draft, RW_HOOKS_CUT), trim = design->hooks_trim;
  double set_back = design->hooks_bend_radius + rod / 2, foot = at.y - rod / 2;
  double bend = trim + design->hooks_claw - set_back;
  double arc = G_PI_2 * (design->hooks_bend_radius + design->hooks_k_factor * rod);
  double thread = cut - trim - rw_draft_value (draft, RW_HOOKS_THREAD_LENGTH);

  rw_draft_slot (draft, HOOKS, RW_HOOKS_CUT);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, at.x, foot, at.x + cut, at.y + rod / 2),
           N_ ("Rod as cut"), 0);
  draw_tick (draft, at, bend, _("bend begins"));
  draw_tick (draft, at, bend + arc, _("bend ends"));
  draw_tick (draft, at, thread, _("thread from here"));
  rw_span_slot (draft, RW_HOOKS_CUT,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { at.x, foot }, { at.x + cut, foot }, -16, 1, NULL });
  rw_span_slot (
      draft, RW_HOOKS_THREAD_LENGTH,
      (RwSpan){ RW_MEASURE_HORIZONTAL, { at.x + thread, foot }, { at.x + cut - trim, foot }, -8, 1, NULL });
}

/* ---- lists ---- */

static void
write_hooks (RwDraft *draft, RwPoint *at)
{
  const RwDesign *design = draft->design;
  double set_back = design->hooks_bend_radius + design->hooks_rod / 2,
         bend = design->hooks_trim + design->hooks_claw - set_back;
  g_autofree char *cut = rw_paper_length (draft, rw_draft_value (draft, RW_HOOKS_CUT), 1);
  g_autofree char *from = rw_paper_length (draft, bend, 1),
                  *trim = rw_paper_length (draft, design->hooks_trim, 1);
  g_autofree char *radius = rw_paper_length (draft, design->hooks_bend_radius, 1);
  g_autofree char *total = rw_paper_length (draft, rw_draft_value (draft, RW_HOOKS_ROD_TOTAL), 0);

  rw_paper_print (draft, at,
                  _("Cut %d rods of %s (%s of rod in all). The bend begins %s from the claw's end, round a "
                      "pin of radius %s; %s is filed off each end afterwards."),
                  (int)design->hooks_count, cut, total, from, radius, trim);
  rw_paper_line (draft, at,
                 _("Bend one, measure its leg, and correct the cut before the rest. Wear eye protection; "
                     "clamp the rod; follow the die maker's advice when threading."));
}

#define FORMERS_EACH_WAY 3

/* The former for the springback in hand and for some more and less, as a test bend may show. */
static void
write_formers (RwDraft *draft, RwPoint *at)
{
  double bore = rw_draft_value (draft, RW_HOOP_BORE), expected = rw_draft_value (draft, RW_HOOP_SPRINGBACK);
  g_autofree char *strip = rw_paper_length (draft, rw_draft_value (draft, RW_HOOP_STRIP), 1);
  g_autofree char *wide = rw_paper_length (draft, bore, 1);
  GString *list = g_string_new (NULL);

  for (int i = -FORMERS_EACH_WAY; i <= FORMERS_EACH_WAY; i++)
    {
      double springback = expected + 0.5 * i;
      g_autofree char *percent
          = rw_quantity_write (springback, "%", RW_UNITS_MM, 1, draft->sheet->style.decimal);
      g_autofree char *former = rw_paper_length (draft, bore / (1 + springback / 100), 1);

      if (springback >= 0)
        g_string_append_printf (list, _("%s%s %% on %s"), list->len > 0 ? ";   " : "", percent, former);
    }
  rw_paper_print (draft, at, _("Hoop: strip %s, finished bore %s."), strip, wide);
  rw_paper_print (draft, at, _("Springback, and the former to bend on: %s."), list->str);
  rw_paper_line (draft, at,
                 _("Test bend: former ____________   bore it came to ____________   springback = 100 (bore "
                     "/ former - 1) = ____________"));
  rw_paper_line (draft, at,
                 _("Brazing: clear the bench, keep water by, ventilate, and follow the torch and flux "
                     "makers' advice."));
  g_string_free (list, TRUE);
}

static void
write_notches (RwDraft *draft, RwPoint *at)
{
  int count = (int)draft->design->hooks_count;
  GString *list = g_string_new (NULL);

  for (int k = 1; k <= count && isfinite (rw_draft_value (draft, RW_HOOP_NOTCH_ARC + k)); k++)
    {
      g_autofree char *arc = rw_paper_figure (draft, rw_draft_value (draft, RW_HOOP_NOTCH_ARC + k), 1);

      g_string_append_printf (list, "%s%d: %s", k > 1 ? ";  " : "", k, arc);
    }
  if (list->len > 0)
    rw_paper_print (draft, at,
                    _("Notches, round the hoop's outside from the neck towards the treble side: %s."),
                    list->str);
  g_string_free (list, TRUE);
}

#define ROOM 16.0

RwSheet *
rw_paper_hooks_hoop (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Hooks and hoop"));
  RwPoint under;

  rw_draw_hook (&draft);
  under = rw_paper_under (&draft);
  draw_blank (&draft, (RwPoint){ under.x, under.y - ROOM });
  under = rw_paper_under (&draft);
  write_hooks (&draft, &under);
  write_formers (&draft, &under);
  write_notches (&draft, &under);
  return rw_paper_end (&draft);
}
