/* Height of the strings over the crowns, and the neck's bending that is part of it.
 *
 * In the unloaded plane of the crowns a string runs straight from its start to the bridge, and crown n stands at
 * v(n); see pitch.h and beam.h. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

/* From the start of a string at x, mm, its height there over the unloaded plane. */
typedef struct
{
  int    fret; /* where it starts */
  double x, height;
} Start;

static void
fill_action (const RwStudyDraft *draft, double *values, Start start, gboolean bent)
{
  const RwResult *result = draft->result;

  for (int n = start.fret + 1; n <= result->plan.last; n++)
    {
      double t = (result->plan.fret_x[n] - start.x) / (result->plan.length - start.x);

      values[n] = start.height * (1 - t) + result->side.fret_plane * t - (bent ? result->side.lift[n] : 0);
    }
}

static double *
line (RwStudyDraft *draft, int panel, const char *title, const char *label)
{
  return rw_study_column (draft, (RwColumnKind){ "mm", panel, RW_COLUMN_LINE }, g_strdup (draft->translate (title)),
                          g_strdup (draft->translate (label)));
}

static void
fill_lift (const RwStudyDraft *draft, double *values)
{
  for (int n = 0; n <= draft->result->plan.last; n++)
    values[n] = draft->result->side.lift[n];
}

void
rw_study_action (RwStudyDraft *draft)
{
  const RwResult *result = draft->result;
  const RwSide *side = &result->side;
  const RwDesign *d = &result->used;
  Start nut = { 0, 0, d->nut_string_height + side->pull_up };
  Start before = { 0, 0, d->nut_string_height };
  Start fifth = { (int) d->fifth_start_fret, result->plan.short_x, d->fifth_start_height + side->lift_short };
  gboolean solved = side->outcome == RW_SIDE_SOLVED;

  rw_study_rows (draft, draft->translate (N_("Fret")), 0, result->plan.last);
  draft->study->panels[0] = g_strdup (draft->translate (N_("Strings over the frets")));
  draft->study->panels[1] = g_strdup (draft->translate (N_("Neck bent towards the strings")));

  double *long_action = line (draft, 0, N_("Long strings, strings on"), N_("long"));
  double *straight = line (draft, 0, N_("Long strings, same bridge, neck unbent"), N_("unbent"));
  double *short_action = NULL;
  if (result->plan.has_short)
    short_action = line (draft, 0, N_("Short string, strings on"), N_("short"));
  double *lift = line (draft, 1, N_("Neck bent towards the strings"), N_("neck"));

  if (!solved)
    return;
  fill_action (draft, long_action, nut, TRUE);
  fill_action (draft, straight, before, FALSE);
  if (short_action != NULL)
    fill_action (draft, short_action, fifth, TRUE);
  fill_lift (draft, lift);
}
