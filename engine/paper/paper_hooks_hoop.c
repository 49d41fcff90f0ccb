#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Hooks and hoop: the hook as bent, its rod as cut with the places of the bend, the hoop's section and a card
 * of its curve; what to bend on, and where the notches go. */

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

static double
bend_from (const RwDesign *design)
{
  return design->hooks_trim + design->hooks_claw - design->hooks_bend_radius - design->hooks_rod / 2;
}

/* The rod along x from the claw's end; at: its axis at that end. */
static void
draw_blank (RwDraft *draft, RwPoint at)
{
  const RwDesign *design = draft->design;
  double rod = design->hooks_rod, cut = rw_draft_value (draft, RW_HOOKS_CUT), trim = design->hooks_trim;
  double foot = at.y - rod / 2, bend = bend_from (design);
  double arc = G_PI_2 * (design->hooks_bend_radius + design->hooks_k_factor * rod);
  double thread = cut - trim - rw_draft_value (draft, RW_HOOKS_THREAD_LENGTH);

  rw_draft_slot (draft, HOOKS, RW_HOOKS_CUT);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, at.x, foot, at.x + cut, at.y + rod / 2),
           N_ ("Rod as cut"), 0);
  draw_tick (draft, at, bend, _("bend begins"));
  draw_tick (draft, at, bend + arc, _("bend ends"));
  draw_tick (draft, at, thread, _("thread from here"));
  rw_span_slot (draft, RW_HOOKS_CUT,
                (RwSpan){ RW_MEASURE_HORIZONTAL, { at.x, foot }, { at.x + cut, foot }, -14, 1, NULL });
  rw_span_slot (
      draft, RW_HOOKS_THREAD_LENGTH,
      (RwSpan){ RW_MEASURE_HORIZONTAL, { at.x + thread, foot }, { at.x + cut - trim, foot }, -7, 1, NULL });
}

/* ---- the hoop's curve ---- */

#define CURVE_HALF 38.0 /* of its chord */
#define CURVE_BACK 10.5

/* A card to try the bent strip against, from inside; at: the middle of the curve. */
static void
draw_curve (RwDraft *draft, RwPoint at)
{
  double radius = rw_draft_value (draft, RW_HOOP_BORE) / 2, turn = asin (fmin (CURVE_HALF / radius, 1));
  double foot = at.y - (radius - radius * cos (turn)) - CURVE_BACK;
  g_autofree char *bore = rw_paper_length (draft, 2 * radius, 1);
  g_autofree char *words = g_strdup_printf (_("curve of the hoop's inside, ⌀ %s"), bore);

  rw_draft_slot (draft, HOOP, RW_HOOP_BORE);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE);
  rw_path_move (draft->sheet, at.x - CURVE_HALF, foot);
  rw_path_arc (draft->sheet, (RwPoint){ at.x, at.y - radius }, radius, G_PI_2 + turn, G_PI_2 - turn);
  rw_path_line (draft->sheet, at.x + CURVE_HALF, foot);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Curve of the hoop"), 0);
  rw_paper_words (draft, (RwPoint){ at.x, foot + 5 }, words);
}

/* ---- tables ---- */

static void
cell_number (RwDraft *draft, RwPoint at, int number)
{
  g_autofree char *text = g_strdup_printf ("%d", number);

  rw_paper_cell (draft, at, RW_ALIGN_END, text);
}

#define FORMERS_EACH_WAY 3
#define FORMER_STEP 0.5 /* per cent */
#define SPRINGBACK_X 24.0
#define FORMER_X 72.0
#define WRITTEN_X 80.0
#define WRITTEN_WIDTH 84.0

/* The former for the springback in hand and for some more and less, as a test bend may show; room for test
 * bends beside it. */
static void
write_formers (RwDraft *draft, RwPoint *at)
{
  double bore = rw_draft_value (draft, RW_HOOP_BORE), expected = rw_draft_value (draft, RW_HOOP_SPRINGBACK);

  rw_paper_cell (draft, (RwPoint){ at->x + SPRINGBACK_X, at->y }, RW_ALIGN_END, _("springback"));
  rw_paper_cell (draft, (RwPoint){ at->x + FORMER_X, at->y }, RW_ALIGN_END, _("former ⌀"));
  rw_paper_cell (draft, (RwPoint){ at->x + WRITTEN_X, at->y }, RW_ALIGN_START,
                 _("test bends: former, bore it came to, springback"));
  for (int i = -FORMERS_EACH_WAY; i <= FORMERS_EACH_WAY; i++)
    {
      double springback = expected + FORMER_STEP * i;
      g_autofree char *percent
          = rw_quantity_write (springback, "%", RW_UNITS_MM, 1, draft->sheet->style.decimal);
      g_autofree char *shown = g_strdup_printf (_("%s %%"), percent);
      g_autofree char *former = rw_paper_length (draft, bore / (1 + springback / 100), 1);

      if (!(springback >= 0))
        continue;
      at->y -= RW_PAPER_ROW;
      rw_paper_cell (draft, (RwPoint){ at->x + SPRINGBACK_X, at->y }, RW_ALIGN_END, shown);
      rw_paper_cell (draft, (RwPoint){ at->x + FORMER_X, at->y }, RW_ALIGN_END, former);
      rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, at->x + WRITTEN_X, at->y - 0.8,
                     at->x + WRITTEN_X + WRITTEN_WIDTH, at->y - 0.8);
    }
  at->y -= RW_PAPER_ROW + 2;
}

#define NOTCH_COLUMNS 5
#define NOTCH_WIDTH 32.0

static void
write_notches (RwDraft *draft, RwPoint *at)
{
  int count = (int)draft->design->hooks_count, rows = (count + NOTCH_COLUMNS - 1) / NOTCH_COLUMNS;

  if (draft->design->hoop_seat != RW_SEAT_NOTCHES)
    return;
  rw_paper_line (
      draft, at,
      _("Notches, round the hoop's outside from the neck's centre line towards the treble side:"));
  for (int k = 1; k <= count; k++)
    {
      RwPoint cell = { at->x + (k - 1) / rows * NOTCH_WIDTH, at->y - (k - 1) % rows * RW_PAPER_ROW };
      g_autofree char *arc = rw_paper_figure (draft, rw_draft_value (draft, RW_HOOP_NOTCH_ARC + k), 1);

      cell_number (draft, (RwPoint){ cell.x + 5, cell.y }, k);
      rw_paper_cell (draft, (RwPoint){ cell.x + 24, cell.y }, RW_ALIGN_END, arc);
    }
  at->y -= rows * RW_PAPER_ROW + 2;
}

/* ---- notes ---- */

static void
write_hooks (RwDraft *draft, RwPoint *at)
{
  const RwDesign *design = draft->design;
  int count = (int)design->hooks_count;
  g_autofree char *cut = rw_paper_length (draft, rw_draft_value (draft, RW_HOOKS_CUT), 1);
  g_autofree char *from = rw_paper_length (draft, bend_from (design), 1),
                  *trim = rw_paper_length (draft, design->hooks_trim, 1);
  g_autofree char *radius = rw_paper_length (draft, design->hooks_bend_radius, 1);
  g_autofree char *total = rw_paper_length (draft, rw_draft_value (draft, RW_HOOKS_ROD_TOTAL), 0);

  rw_paper_print (
      draft, at,
      ngettext ("Cut %d rod of %s (%s of rod in all). The bend begins %s from the claw's end, round "
                "a pin of radius %s; %s is filed off each end afterwards.",
                "Cut %d rods of %s (%s of rod in all). The bend begins %s from the claw's end, round "
                "a pin of radius %s; %s is filed off each end afterwards.",
                count),
      count, cut, total, from, radius, trim);
  rw_paper_line (
      draft, at,
      _("Bend one, hang it on the pot, measure its leg, and correct the cut before the rest. Wear eye "
         "protection; clamp the rod; follow the die maker's advice when threading."));
  rw_paper_line (draft, at,
                 _("Leg of the first hook as bent: ____________   cut corrected to: ____________"));
}

static void
write_hoop (RwDraft *draft, RwPoint *at)
{
  g_autofree char *strip = rw_paper_length (draft, rw_draft_value (draft, RW_HOOP_STRIP), 1);
  g_autofree char *bore = rw_paper_length (draft, rw_draft_value (draft, RW_HOOP_BORE), 1);
  g_autofree char *outer = rw_paper_length (draft, rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER), 1);

  rw_paper_print (
      draft, at,
      _("Hoop: strip %s, inside ⌀ %s, outside ⌀ %s as finished. Bend on a former as its springback "
         "asks; springback is 100 × (bore it came to / former − 1)."),
      strip, bore, outer);
  write_formers (draft, at);
  rw_paper_line (
      draft, at,
      _("Brazing: clear the bench, keep water by, ventilate, and follow the torch and flux makers' "
         "advice."));
}

/* ---- the sheet ---- */

#define SECTION_X 44.0
#define CURVE_X 106.0
#define ROD_X 70.0
#define ROD_BELOW 57.0 /* so that its words stay under the curve */

RwSheet *
rw_paper_hooks_hoop (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Hooks and hoop"));
  double leg = rw_draft_value (&draft, RW_HOOKS_LEG);
  guint first;
  RwPoint under;
  RwBox box;

  rw_draw_hook_bent (&draft);
  first = draft.sheet->items->len;
  rw_draw_hoop_section (&draft);
  box = rw_sheet_extent (draft.sheet);
  rw_sheet_move (draft.sheet, first, SECTION_X, -leg - box.y0);
  draw_curve (&draft, (RwPoint){ CURVE_X, 0 });
  draw_blank (&draft, (RwPoint){ ROD_X, -fmax (leg, ROD_BELOW) });
  under = rw_paper_under (&draft);
  write_hooks (&draft, &under);
  rw_paper_part (&draft, &under);
  write_hoop (&draft, &under);
  rw_paper_part (&draft, &under);
  write_notches (&draft, &under);
  return rw_paper_end (&draft);
}
