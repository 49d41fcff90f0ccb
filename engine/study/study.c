#include "study_parts.h"

#include <glib/gi18n-lib.h>

static const struct
{
  const char *id;
  const char *title;
  void (*fill) (RwStudyDraft *draft);
} studies[RW_STUDY_COUNT] = {
  [RW_STUDY_PITCH] = { "pitch", N_("Pitch of the frets"), rw_study_pitch },
  [RW_STUDY_ACTION] = { "action", N_("Action along the neck"), rw_study_action },
  [RW_STUDY_STRINGS] = { "strings", N_("Pull and stress of the strings"), rw_study_strings },
  [RW_STUDY_SEASONS] = { "seasons", N_("Movement over the seasons"), rw_study_seasons },
};

const char *
rw_study_id (RwStudyKind kind)
{
  return studies[kind].id;
}

const char *
rw_study_title (RwStudyKind kind)
{
  return studies[kind].title;
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
rw_study_new (RwStudyKind kind, const RwResult *result, RwTranslate translate)
{
  RwStudy *study = g_new0 (RwStudy, 1);
  RwStudyDraft draft = { result, translate, study };

  study->kind = kind;
  study->rows = g_ptr_array_new_with_free_func (g_free);
  study->columns = g_array_new (FALSE, TRUE, sizeof (RwStudyColumn));
  g_array_set_clear_func (study->columns, clear_column);
  studies[kind].fill (&draft);
  return study;
}

void
rw_study_free (RwStudy *study)
{
  g_ptr_array_unref (study->rows);
  g_array_unref (study->columns);
  g_free (study->row_title);
  g_free (study->panels[0]);
  g_free (study->panels[1]);
  g_free (study);
}

gboolean
rw_study_has_numbers (const RwStudy *study)
{
  for (guint i = 0; i < study->columns->len; i++)
    for (guint row = 0; row < study->rows->len; row++)
      if (isfinite (g_array_index (study->columns, RwStudyColumn, i).values[row]))
        return TRUE;
  return FALSE;
}

/* ---- putting a table together ---- */

void
rw_study_row (RwStudyDraft *draft, char *name)
{
  g_ptr_array_add (draft->study->rows, name);
}

void
rw_study_rows (RwStudyDraft *draft, const char *title, int first, int last)
{
  draft->study->row_title = g_strdup (title);
  draft->study->counted = TRUE;
  draft->study->first_row = first;
  for (int n = first; n <= last; n++)
    rw_study_row (draft, g_strdup_printf ("%d", n));
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
