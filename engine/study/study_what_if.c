/* The curve of a what if as a study. */
#include "what_if.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#include "study_parts.h"

#define ID "what-if"

static double *
column (RwStudyDraft *draft, const char *unit, RwColumnRole role, const char *title, const char *label)
{
  return rw_study_column (draft, (RwColumnKind){ unit, 0, role }, g_strdup (title),
                          g_strdup (draft->translate (label)));
}

static RwStudy *
begin (const RwWhatIf *what, const char *result, RwTranslate translate)
{
  const RwParam *param = rw_param (what->param);
  RwStudy *study = rw_study_empty (ID, g_strdup (translate (N_("What if"))));
  g_auto (GStrv) parts = g_strsplit (translate (N_("{result} against {parameter}")), "{result}", 2);
  g_autofree char *first = g_strjoinv (result, parts);
  g_auto (GStrv) others = g_strsplit (first, "{parameter}", 2);

  study->panels[0] = g_strjoinv (translate (param->label), others);
  study->free_range = TRUE;
  study->whole = param->kind == RW_KIND_COUNT;
  return study;
}

/* The places of a curve and one more, which is left out where it is no number. */
static void
choose_rows (RwStudyDraft *draft, const RwParam *param, const RwWhatIfCurve *curve, double more)
{
  double at[RW_WHAT_IF_POINTS + 1];
  guint count = curve->count;

  memcpy (at, curve->at, count * sizeof at[0]);
  if (isfinite (more))
    at[count++] = more;
  rw_study_places (draft, draft->translate (param->label), param->unit, at, rw_study_sort_places (at, count));
}

static void
add_wanted (RwStudyDraft *draft, const char *unit, double wanted, const RwWhatIfAnswer *answer)
{
  double *level = column (draft, unit, RW_COLUMN_LINE, draft->translate (N_("Wanted")), N_("wanted"));
  double *then = column (draft, unit, RW_COLUMN_POINT, draft->translate (N_("What gives it")), N_("then"));

  for (guint i = 0; i < draft->study->rows->len; i++)
    level[i] = wanted;
  if (isfinite (answer->value))
    then[rw_study_row_of (draft, answer->value)] = answer->result;
}

RwStudy *
rw_study_what_if (const RwWhatIf *what, double wanted, RwWhatIfAnswer *answer, RwTranslate translate)
{
  const RwParam *param = rw_param (what->param);
  g_autofree char *result = rw_slot_label_in (what->slot, translate);
  const char *unit = rw_slot_dim (what->slot)->unit;
  RwStudyDraft draft = { NULL, translate, begin (what, result, translate) };
  RwWhatIfCurve curve;
  double *values, *now;

  rw_what_if_curve (what, &curve);
  *answer = rw_what_if_solve (what, &curve, wanted);
  choose_rows (&draft, param, &curve, answer->value);
  values = column (&draft, unit, RW_COLUMN_LINE, result, N_("result"));
  for (guint i = 0; i < curve.count; i++)
    values[rw_study_row_of (&draft, curve.at[i])] = curve.values[i];
  if (isfinite (answer->value))
    values[rw_study_row_of (&draft, answer->value)] = answer->result;
  now = column (&draft, unit, RW_COLUMN_POINT, translate (N_("Now")), N_("now"));
  now[rw_study_row_of (&draft, what->now)] = values[rw_study_row_of (&draft, what->now)];
  if (isfinite (wanted))
    add_wanted (&draft, unit, wanted, answer);
  return draft.study;
}
