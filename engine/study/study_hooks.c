/* What a hook pulls, and what its nut must be turned with, for heads from slack to very tight.
 *
 * Pull: that of a head that slides over its edge without friction, so an upper bound.  Torque: by the finish of the
 * thread (model/hooks.h).
 * Where the thread yields: soft stainless rod, 207 MPa over the stress area.
 * Source: R. Hibbeler, Mechanics of Materials, properties of stainless 304. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

#include "table/material.h"
#include "model/hooks.h"

#define STEPS 40
#define YIELD_MPA 207.0
#define LEAST_SPAN 8000.0 /* N/m that the plot reaches at least */
#define BEYOND 1.25       /* of the present tension */

static const struct
{
  double factor;
  const char *title, *label;
} torques[] = {
  { RW_NUT_FACTOR_PLAIN, N_("Torque, plain thread"), N_("plain") },
  { RW_NUT_FACTOR_GREASED, N_("Torque, greased with anti-seize"), N_("greased") },
  { RW_NUT_FACTOR_BLACK, N_("Torque, black thread"), N_("black") },
};

static double *
line (RwStudyDraft *draft, RwColumnKind kind, const char *title, const char *label)
{
  return rw_study_column (draft, kind, g_strdup (draft->translate (title)), g_strdup (draft->translate (label)));
}

/* Pull of a hook for each N/m of the head. */
static double
pull_per_tension (const RwResult *result)
{
  return result->value[RW_HEAD_LOAD_PER_HOOK] / result->value[RW_HEAD_TENSION];
}

/* The strength of the thread stands in the plot only where it would not press the rest flat. */
static void
add_pulls (RwStudyDraft *draft, const RwThread *thread, guint now)
{
  const GArray *rows = draft->study->rows;
  double yield = YIELD_MPA * thread->stress_area_mm2;
  double most = pull_per_tension (draft->result) * g_array_index (rows, RwStudyRow, rows->len - 1).at;
  RwColumnKind limit = { "N", yield < 2 * most ? 0 : RW_TABLE_ONLY, RW_COLUMN_LINE };
  double *pulls = line (draft, (RwColumnKind){ "N", 0, RW_COLUMN_LINE }, N_("Pull of a hook"), N_("hook"));
  double *yields = line (draft, limit, N_("Thread yields"), N_("yields"));
  double *present = line (draft, (RwColumnKind){ "N", 0, RW_COLUMN_POINT }, N_("Pull now"), N_("now"));

  for (guint row = 0; row < rows->len; row++)
    {
      pulls[row] = pull_per_tension (draft->result) * g_array_index (rows, RwStudyRow, row).at;
      yields[row] = yield;
    }
  present[now] = pulls[now];
}

static void
add_torques (RwStudyDraft *draft, const RwThread *thread, guint now)
{
  double plain = NAN;

  for (gsize i = 0; i < G_N_ELEMENTS (torques); i++)
    {
      double *values = line (draft, (RwColumnKind){ "N m", 1, RW_COLUMN_LINE }, torques[i].title, torques[i].label);

      for (guint row = 0; row < draft->study->rows->len; row++)
        values[row] = torques[i].factor * thread->major_mm * 1e-3 * pull_per_tension (draft->result)
                      * g_array_index (draft->study->rows, RwStudyRow, row).at;
      if (i == 0)
        plain = values[now];
    }
  line (draft, (RwColumnKind){ "N m", 1, RW_COLUMN_POINT }, N_("Torque now"), N_("now"))[now] = plain;
}

void
rw_study_hooks (RwStudyDraft *draft)
{
  const RwThread *thread = &rw_threads[draft->result->used.hooks_thread];
  double tension = draft->result->value[RW_HEAD_TENSION], at[STEPS + 2];
  double most = fmax (LEAST_SPAN, isfinite (tension) ? BEYOND * tension : 0);
  guint count = 0;

  for (int i = 0; i <= STEPS; i++)
    at[count++] = most * i / STEPS;
  if (isfinite (tension))
    at[count++] = tension;
  draft->study->panels[0] = g_strdup (draft->translate (N_("Pull of a hook over the head's tension")));
  draft->study->panels[1] = g_strdup (draft->translate (N_("Torque on its nut over the head's tension")));
  rw_study_places (draft, draft->translate (N_("Head tension")), "N/m", at, rw_study_sort_places (at, count));
  add_pulls (draft, thread, rw_study_row_of (draft, tension));
  add_torques (draft, thread, rw_study_row_of (draft, tension));
}
