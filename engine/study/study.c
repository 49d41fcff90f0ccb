#include "study_parts.h"

#include <glib/gi18n-lib.h>
#include <stdlib.h>
#include <string.h>

static const struct
{
  const char *id;
  const char *name;
  const char *title;
  void (*fill) (RwStudyDraft *draft);
} studies[RW_STUDY_COUNT] = {
  [RW_STUDY_PITCH] = { "pitch", N_("Pitch"), N_("Pitch of the frets"), rw_study_pitch },
  [RW_STUDY_ACTION] = { "action", N_("Action"), N_("Action along the neck"), rw_study_action },
  [RW_STUDY_STRINGS] = { "strings", N_("Strings"), N_("Pull and stress of the strings"), rw_study_strings },
  [RW_STUDY_HEAD] = { "head", N_("Head"), N_("Sag of the head"), rw_study_head },
  [RW_STUDY_HOOKS] = { "hooks", N_("Hooks"), N_("Hooks and tightening"), rw_study_hooks },
  [RW_STUDY_SEASONS] = { "seasons", N_("Seasons"), N_("Movement over the seasons"), rw_study_seasons },
  [RW_STUDY_TEMPERAMENT] = { "temperament", N_("Temperament"), N_("Notes and slots against equal temperament"),
                             rw_study_temperament },
};

const char *
rw_study_id (RwStudyKind kind)
{
  return studies[kind].id;
}

const char *
rw_study_name (RwStudyKind kind)
{
  return studies[kind].name;
}

const char *
rw_study_title (RwStudyKind kind)
{
  return studies[kind].title;
}

int
rw_study_find (const char *id)
{
  for (int kind = 0; kind < RW_STUDY_COUNT; kind++)
    if (strcmp (studies[kind].id, id) == 0)
      return kind;
  return -1;
}

static void
clear_row (gpointer data)
{
  g_free (((RwStudyRow *) data)->name);
}

static void
clear_column (gpointer data)
{
  RwStudyColumn *column = data;

  g_free (column->title);
  g_free (column->label);
  g_free (column->values);
}

RwStudy *
rw_study_empty (const char *id, char *title)
{
  RwStudy *study = g_new0 (RwStudy, 1);

  study->id = id;
  study->title = title;
  study->rows = g_array_new (FALSE, TRUE, sizeof (RwStudyRow));
  g_array_set_clear_func (study->rows, clear_row);
  study->columns = g_array_new (FALSE, TRUE, sizeof (RwStudyColumn));
  g_array_set_clear_func (study->columns, clear_column);
  return study;
}

RwStudy *
rw_study_new (RwStudyKind kind, const RwResult *result, RwTranslate translate)
{
  RwStudy *study = rw_study_empty (studies[kind].id, g_strdup (translate (studies[kind].title)));
  RwStudyDraft draft = { result, translate, study };

  studies[kind].fill (&draft);
  return study;
}

void
rw_study_free (RwStudy *study)
{
  g_array_unref (study->rows);
  g_array_unref (study->columns);
  g_free (study->title);
  g_free (study->row_title);
  g_free (study->panels[0]);
  g_free (study->panels[1]);
  g_free (study);
}

const RwStudyColumn *
rw_study_column_at (const RwStudy *study, guint column)
{
  return &g_array_index (study->columns, RwStudyColumn, column);
}

gboolean
rw_study_has_numbers (const RwStudy *study)
{
  for (guint i = 0; i < study->columns->len; i++)
    for (guint row = 0; row < study->rows->len; row++)
      if (isfinite (rw_study_column_at (study, i)->values[row]))
        return TRUE;
  return FALSE;
}

char *
rw_study_row_name (const RwStudy *study, guint row, RwStyle style)
{
  const RwStudyRow *found = &g_array_index (study->rows, RwStudyRow, row);

  if (found->name != NULL)
    return g_strdup (found->name);
  return rw_quantity_show (found->at, study->row_unit, style.units, style.decimal);
}

/* ---- putting a table together ---- */

static void
add_row (RwStudyDraft *draft, char *name, double at)
{
  RwStudyRow row = { name, at };

  g_array_append_val (draft->study->rows, row);
}

void
rw_study_row (RwStudyDraft *draft, char *name)
{
  add_row (draft, name, draft->study->rows->len);
}

void
rw_study_places (RwStudyDraft *draft, const char *title, const char *unit, const double *at, guint count)
{
  draft->study->row_title = g_strdup (title);
  draft->study->row_unit = unit;
  for (guint i = 0; i < count; i++)
    add_row (draft, NULL, at[i]);
}

void
rw_study_rows (RwStudyDraft *draft, const char *title, int first, int last)
{
  rw_study_places (draft, title, "", NULL, 0);
  draft->study->whole = TRUE;
  for (int n = first; n <= last; n++)
    add_row (draft, NULL, n);
}

guint
rw_study_row_of (const RwStudyDraft *draft, double at)
{
  const GArray *rows = draft->study->rows;
  guint best = 0;

  for (guint i = 1; i < rows->len; i++)
    if (fabs (g_array_index (rows, RwStudyRow, i).at - at) < fabs (g_array_index (rows, RwStudyRow, best).at - at))
      best = i;
  return best;
}

double *
rw_study_column (RwStudyDraft *draft, RwColumnKind kind, char *title, char *label)
{
  guint rows = draft->study->rows->len;
  RwStudyColumn column = { title, label, kind.unit, kind.panel, kind.role, g_new (double, rows) };

  for (guint i = 0; i < rows; i++)
    column.values[i] = NAN;
  g_array_append_val (draft->study->columns, column);
  return column.values;
}

char *
rw_study_string_name (const RwStudyDraft *draft, int string)
{
  return g_strdup_printf ("%d %s", string, draft->result->used.strings_set.at[string - 1].note);
}

static int
compare_places (const void *a, const void *b)
{
  double one = *(const double *) a, other = *(const double *) b;

  return one < other ? -1 : one > other;
}

guint
rw_study_sort_places (double *at, guint count)
{
  double hair = 0;
  guint kept = 0;

  qsort (at, count, sizeof at[0], compare_places);
  if (count > 0)
    hair = 1e-9 * (at[count - 1] - at[0]);
  for (guint i = 0; i < count; i++)
    if (kept == 0 || at[i] - at[kept - 1] > hair)
      at[kept++] = at[i];
  return kept;
}
