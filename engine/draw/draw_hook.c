#include "draw_parts.h"

#include <math.h>

#include "table/material.h"

/* Hook and tension hoop: the hook bent and straight, the hoop with its notches and the former it is bent on.
 * Frame of the hook: from the leg's axis towards the claw's tip, height over the claw's axis. */

static double
bend_radius (const RwDesign *design)
{
  return fmax (fmin (design->hooks_bend_radius, design->hooks_claw - design->hooks_rod / 2 - 0.5), 0.2);
}

static void
draw_bent (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double rod = design->hooks_rod / 2, bend = bend_radius (design), turn = bend + rod,
         leg = -rw_draft_value (draft, RW_HOOKS_LEG);
  RwPoint centre = { turn, -turn };

  rw_draft_slot (draft, HOOKS, RW_HOOKS_LEG);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL);
  rw_path_move (draft->sheet, design->hooks_claw, rod);
  rw_path_arc (draft->sheet, centre, turn + rod, G_PI_2, G_PI);
  rw_path_line (draft->sheet, -rod, leg);
  rw_path_line (draft->sheet, rod, leg);
  rw_path_arc (draft->sheet, centre, bend, G_PI, G_PI_2);
  rw_path_line (draft->sheet, design->hooks_claw, -rod);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Hook"), 0);
}

/* The thread by its core (ISO 6410-1). */
static void
draw_thread (RwDraft *draft)
{
  const RwThread *thread = &rw_threads[draft->design->hooks_thread];
  double core = (thread->major_mm - 1.2269 * thread->pitch_mm) / 2, rod = draft->design->hooks_rod / 2;
  double end = -rw_draft_value (draft, RW_HOOKS_LEG),
         from = end + rw_draft_value (draft, RW_HOOKS_THREAD_LENGTH);

  rw_draft_slot (draft, HOOKS, RW_HOOKS_THREAD_LENGTH);
  for (int side = -1; side <= 1; side += 2)
    rw_sheet_line (draft->sheet, RW_PEN_EDGE, side * core, end, side * core, from);
  rw_name (rw_sheet_line (draft->sheet, RW_PEN_OUTLINE, -rod, from, rod, from), N_ ("Thread ends"), 0);
}

static void
bent_sizes (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double rod = design->hooks_rod / 2, end = -rw_draft_value (draft, RW_HOOKS_LEG),
         bend = bend_radius (design);
  double inside = bend * (1 - G_SQRT2 / 2);
  RwPoint round = { rod + inside, -rod - inside };

  rw_span_slot (draft, RW_HOOKS_LEG,
                (RwSpan){ RW_MEASURE_VERTICAL, { -rod, end }, { -rod, 0 }, -16, 1, N_ ("leg %s") });
  rw_span_slot (draft, RW_HOOKS_THREAD_LENGTH,
                (RwSpan){ RW_MEASURE_VERTICAL,
                          { -rod, end },
                          { -rod, end + rw_draft_value (draft, RW_HOOKS_THREAD_LENGTH) },
                          -8,
                          1,
                          N_ ("thread %s") });
  rw_span_param (draft, RW_P_hooks_claw,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { 0, rod }, { design->hooks_claw, rod }, 7, 1, NULL });
  rw_note_param (draft, RW_P_hooks_bend_radius,
                 (RwNote){ round, { round.x + 9, round.y - 12 }, 2, N_ ("bend R %s") });
  rw_note_param (draft, RW_P_hooks_rod,
                 (RwNote){ { rod, end * 0.45 }, { rod + 9, end * 0.45 - 10 }, 2, N_ ("rod ⌀ %s") });
}

void
rw_draw_hook_bent (RwDraft *draft)
{
  draw_bent (draft);
  draw_thread (draft);
  bent_sizes (draft);
}

/* ---- before bending ---- */

#define BLANK_BESIDE 34.0

static void
draw_blank (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double x = design->hooks_claw + BLANK_BESIDE, rod = design->hooks_rod / 2, trim = design->hooks_trim;
  double top = rod + trim, foot = top - rw_draft_value (draft, RW_HOOKS_CUT);

  rw_draft_slot (draft, HOOKS, RW_HOOKS_CUT);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, x - rod, foot, x + rod, top),
           N_ ("Rod for a hook"), 0);
  rw_draft_param (draft, HOOKS, hooks_trim);
  if (trim > 0)
    {
      rw_sheet_line (draft->sheet, RW_PEN_EDGE, x - rod, top - trim, x + rod, top - trim);
      rw_sheet_line (draft->sheet, RW_PEN_EDGE, x - rod, foot + trim, x + rod, foot + trim);
    }
  rw_span_slot (
      draft, RW_HOOKS_BLANK,
      (RwSpan){ RW_MEASURE_VERTICAL, { x + rod, foot + trim }, { x + rod, top - trim }, 7, 1, N_ ("blank %s") });
  rw_span_slot (draft, RW_HOOKS_CUT,
                (RwSpan){ RW_MEASURE_VERTICAL, { x + rod, foot }, { x + rod, top }, 15, 1, N_ ("cut %s") });
}

/* ---- the hoop's section, below the hook ---- */

#define SECTION_BELOW 26.0
#define HATCH 1.8

void
rw_draw_hoop_section (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double half = design->hoop_thickness / 2, top = -rw_draft_value (draft, RW_HOOKS_CUT) - SECTION_BELOW,
         foot = top - design->hoop_height;
  double seat = fmax (top - design->hoop_notch_depth, foot);
  const RwPoint solid[] = { { -half, seat }, { half, seat }, { half, foot }, { -half, foot } };

  rw_draft_param (draft, HOOP, hoop_notch_depth);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_METAL, -half, seat, half, top), N_ ("Notch"),
           0);
  rw_draft_param (draft, HOOP, hoop_height);
  rw_sheet_polygon (draft->sheet, RW_PEN_NONE, RW_TINT_METAL, solid, 4);
  rw_hatch (draft, solid, 4, HATCH, 1);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, solid, 4),
           N_ ("Section of the hoop"), 0);
  rw_span_param (draft, RW_P_hoop_height,
                 (RwSpan){ RW_MEASURE_VERTICAL, { -half, foot }, { -half, top }, -8, 2, NULL });
  rw_span_param (draft, RW_P_hoop_notch_depth,
                 (RwSpan){ RW_MEASURE_VERTICAL, { half, seat }, { half, top }, 8, 2, NULL });
  rw_span_param (draft, RW_P_hoop_thickness,
                 (RwSpan){ RW_MEASURE_HORIZONTAL, { -half, foot }, { half, foot }, -8, 2, NULL });
}

/* ---- hoop ---- */

#define HOOP_BESIDE 52.0

static void
draw_notch (RwDraft *draft, int hook)
{
  double outer = rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2,
         inner = rw_draft_value (draft, RW_HOOP_BORE) / 2;
  double angle = rw_draft_value (draft, RW_HOOKS_ANGLE + hook) * G_PI / 180,
         half = draft->design->hooks_rod / 2;
  const RwPoint corners[] = { rw_place_round (angle, inner, -half), rw_place_round (angle, outer, -half),
                              rw_place_round (angle, outer, half), rw_place_round (angle, inner, half) };
  RwPoint at = rw_place_round (angle, outer + 5, 0);
  RwAlign align = at.x > outer / 3 ? RW_ALIGN_START : at.x < -outer / 3 ? RW_ALIGN_END : RW_ALIGN_MIDDLE;

  rw_draft_slot (draft, HOOP, RW_HOOP_NOTCH_ARC + hook);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_EDGE, RW_TINT_PAPER, corners, 4), N_ ("Notch"), hook);
  rw_figure_slot (draft, RW_HOOP_NOTCH_ARC + hook, at, align)->offset_mm = at.y > outer / 3    ? 0
                                                                           : at.y < -outer / 3 ? -2.5
                                                                                               : -1.25;
}

static void
hoop_sizes (RwDraft *draft)
{
  double outer = rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2,
         inner = rw_draft_value (draft, RW_HOOP_BORE) / 2;
  double former = rw_draft_value (draft, RW_HOOP_FORMER) / 2;
  RwPoint a = rw_place_round (0.8 * G_PI, inner, 0), b = rw_place_round (0.3 * G_PI, former, 0);
  RwPoint start = { -outer, 0 }, c = rw_place_round (1.3 * G_PI, inner, 0);

  rw_note_slot (draft, RW_HOOP_BORE, (RwNote){ a, { a.x - 34, a.y - 30 }, 1, N_ ("bore ⌀ %s") });
  rw_note_slot (draft, RW_HOOP_FORMER, (RwNote){ b, { b.x + 34, b.y - 44 }, 1, N_ ("former ⌀ %s") });
  rw_note_slot (draft, RW_HOOP_STRIP, (RwNote){ c, { c.x - 30, c.y + 30 }, 1, N_ ("strip %s") });
  rw_span_slot (draft, RW_HOOP_OUTER_DIAMETER,
                (RwSpan){ RW_MEASURE_HORIZONTAL, start, { outer, 0 }, 0, 1, N_ ("outside ⌀ %s") });
}

static void
draw_hoop (RwDraft *draft)
{
  const RwDesign *design = draft->design;
  double outer = rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2,
         inner = rw_draft_value (draft, RW_HOOP_BORE) / 2;
  RwPoint centre = { 0, 0 };

  rw_draft_slot (draft, HOOP, RW_HOOP_BORE);
  rw_name (rw_ring (draft, RW_PEN_OUTLINE, RW_TINT_METAL, centre, outer, inner), N_ ("Tension hoop"), 0);
  rw_draft_slot (draft, HOOP, RW_HOOP_FORMER);
  rw_name (rw_sheet_circle (draft->sheet, RW_PEN_PHANTOM, RW_TINT_NONE, 0, 0,
                            rw_draft_value (draft, RW_HOOP_FORMER) / 2),
           N_ ("Former"), 0);
  rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
  rw_cross (draft, centre, outer + 2.5);
  if (design->hoop_seat == RW_SEAT_NOTCHES)
    for (int k = 1; k <= (int)design->hooks_count; k++)
      draw_notch (draft, k);
  hoop_sizes (draft);
}

void
rw_draw_hook (RwDraft *draft)
{
  guint first;
  double outer = rw_draft_value (draft, RW_HOOP_OUTER_DIAMETER) / 2;

  rw_draw_hook_bent (draft);
  draw_blank (draft);
  rw_draw_hoop_section (draft);
  first = draft->sheet->items->len;
  draw_hoop (draft);
  if (draft->design->build_handed == RW_HANDED_LEFT)
    rw_sheet_mirror (draft->sheet, first);
  rw_sheet_move (draft->sheet, first, draft->design->hooks_claw + BLANK_BESIDE + HOOP_BESIDE + outer,
                 -rw_draft_value (draft, RW_HOOKS_LEG) / 2);
}
