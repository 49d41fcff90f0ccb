/* Height of the strings over the crowns, and the neck's bending that is part of it.
 *
 * In the unloaded plane of the crowns a string runs straight from its start to the bridge, and crown n stands at
 * v(n); see pitch.h and beam.h. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

static void
fill_action (const RwStudyDraft *draft, double *values, int string)
{
  for (int n = 1; n <= draft->result->plan.last; n++)
    values[n] = rw_action (draft->result, string, n);
}

/* The long strings over a neck that does not give. */
static void
fill_unbent (const RwStudyDraft *draft, double *values)
{
  const RwResult *result = draft->result;

  for (int n = 1; n <= result->plan.last; n++)
    {
      double t = result->plan.fret_x[n] / result->plan.length;

      values[n] = result->used.nut_string_height * (1 - t) + result->side.fret_plane * t;
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

  rw_study_rows (draft, draft->translate (N_("Fret")), 0, result->plan.last);
  draft->study->panels[0] = g_strdup (draft->translate (N_("Strings over the frets")));
  draft->study->panels[1] = g_strdup (draft->translate (N_("Neck bent towards the strings")));

  double *long_action = line (draft, 0, N_("Long strings, strings on"), N_("long"));
  double *straight = line (draft, 0, N_("Long strings, same bridge, neck unbent"), N_("unbent"));
  double *short_action = NULL;
  if (result->plan.has_short)
    short_action = line (draft, 0, N_("Short string, strings on"), N_("short"));
  double *lift = line (draft, 1, N_("Neck bent towards the strings"), N_("neck"));

  if (result->side.outcome != RW_SIDE_SOLVED)
    return;
  fill_action (draft, long_action, 1);
  fill_unbent (draft, straight);
  if (short_action != NULL)
    fill_action (draft, short_action, result->plan.strings);
  fill_lift (draft, lift);
}
