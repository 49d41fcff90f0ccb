#include "document_private.h"

#include <glib/gi18n.h>
#include <math.h>
#include <string.h>

#include "base/words.h"
#include "check/acceptance.h"

G_DEFINE_FINAL_TYPE (RwDocument, rw_document, G_TYPE_OBJECT)

enum
{
  PROP_MODIFIED = 1,
  PROP_COUNT,
};

/* Forms and lists are told of a drag when the hand has rested for so long. */
#define NOTE_MS 120

enum
{
  CHANGED,
  NOTED,
  SELECTED,
  REFERENCE,
  SAVED_STATE,
  SIGNAL_COUNT,
};

static GParamSpec *properties[PROP_COUNT];
static guint signals[SIGNAL_COUNT];

static void
solve (RwDocument *self)
{
  const RwProject *project = rw_history_present (self->history);

  rw_project_measured (project, self->measured);
  rw_solve (&project->design, self->measured, self->now);
  if (project->ledger->entries->len > 0 || project->made->steps->len > 0)
    rw_solve (&project->design, NULL, self->planned);
  else
    *self->planned = *self->now;

  rw_document_forget_remedies (self);
  g_ptr_array_unref (self->findings);
  self->findings = rw_check (&project->design, self->measured, self->now);
  rw_findings_accept (self->findings, project->accepted);
}

void
rw_document_tell_saved_state (RwDocument *self)
{
  gboolean modified = rw_history_modified (self->history);

  if (modified != self->modified)
    {
      self->modified = modified;
      g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_MODIFIED]);
    }
  g_signal_emit (self, signals[SAVED_STATE], 0);
}

void
rw_document_tell_reference (RwDocument *self)
{
  g_signal_emit (self, signals[REFERENCE], 0);
}

static gboolean
note (gpointer data)
{
  RwDocument *self = data;
  RwChange what = self->unnoted;

  g_clear_handle_id (&self->noting, g_source_remove);
  self->unnoted = 0;
  if (what != 0)
    g_signal_emit (self, signals[NOTED], 0, what);
  return G_SOURCE_REMOVE;
}

static void
tell_change (RwDocument *self, RwChange what)
{
  g_signal_emit (self, signals[CHANGED], 0, what);
  self->unnoted |= what;
  g_clear_handle_id (&self->noting, g_source_remove);
  if (self->dragging)
    self->noting = g_timeout_add (NOTE_MS, note, self);
  else
    note (self);
}

/* The project is another than before: work out what follows, and say so. */
static void
refresh (RwDocument *self, RwChange what)
{
  solve (self);
  tell_change (self, what);
  if (!self->dragging)
    rw_document_tell_saved_state (self);
}

void
rw_document_take_project (RwDocument *self, RwProject *project, const char *path)
{
  char *new_path = g_strdup (path);

  g_clear_pointer (&self->history, rw_history_free);
  self->history = rw_history_new (project);
  g_free (self->path);
  self->path = new_path;
  rw_document_mark_file (self);
  self->selection = RW_SUBJECT_NONE;
  refresh (self, RW_CHANGE_PROJECT | RW_CHANGE_NUMBERS);
  g_signal_emit (self, signals[SELECTED], 0);
}

/* ---- making and unmaking ---- */

static void
rw_document_init (RwDocument *self)
{
  self->style = (RwStyle){ RW_UNITS_MM, rw_locale_decimal () };
  self->selection = RW_SUBJECT_NONE;
  self->history = rw_history_new (rw_project_new ());
  self->measured = g_new (RwMeasured, 1);
  self->now = g_new (RwResult, 1);
  self->planned = g_new (RwResult, 1);
  self->findings = g_ptr_array_new ();
  self->remedies = g_hash_table_new_full (NULL, NULL, NULL, (GDestroyNotify) g_ptr_array_unref);
  solve (self);
}

static void
rw_document_finalize (GObject *object)
{
  RwDocument *self = RW_DOCUMENT (object);

  g_clear_handle_id (&self->noting, g_source_remove);
  rw_history_free (self->history);
  g_free (self->path);
  g_free (self->measured);
  g_free (self->now);
  g_free (self->planned);
  g_free (self->drag_start);
  g_free (self->reference);
  g_free (self->reference_name);
  g_free (self->preview);
  g_hash_table_unref (self->remedies);
  g_ptr_array_unref (self->findings);
  G_OBJECT_CLASS (rw_document_parent_class)->finalize (object);
}

static void
rw_document_get_property (GObject *object, guint id, GValue *value, GParamSpec *spec)
{
  if (id == PROP_MODIFIED)
    g_value_set_boolean (value, RW_DOCUMENT (object)->modified);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, spec);
}

static void
rw_document_class_init (RwDocumentClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GType type = G_TYPE_FROM_CLASS (klass);

  object_class->finalize = rw_document_finalize;
  object_class->get_property = rw_document_get_property;

  properties[PROP_MODIFIED] = g_param_spec_boolean ("modified", NULL, NULL, FALSE,
                                                    G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, PROP_COUNT, properties);

  signals[CHANGED] = g_signal_new ("changed", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 1, G_TYPE_UINT);
  signals[NOTED] = g_signal_new ("noted", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 1, G_TYPE_UINT);
  signals[SELECTED] = g_signal_new ("selected", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[REFERENCE] = g_signal_new ("reference", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE,
                                     0);
  signals[SAVED_STATE] = g_signal_new ("saved-state", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                       G_TYPE_NONE, 0);
}

RwDocument *
rw_document_new (void)
{
  return g_object_new (RW_TYPE_DOCUMENT, NULL);
}

/* ---- what there is ---- */

const RwProject *
rw_document_project (RwDocument *self)
{
  return rw_history_present (self->history);
}

const RwDesign *
rw_document_design (RwDocument *self)
{
  return &rw_history_present (self->history)->design;
}

const RwMeasured *
rw_document_measured (RwDocument *self)
{
  return self->measured;
}

const RwResult *
rw_document_now (RwDocument *self)
{
  return self->now;
}

const RwResult *
rw_document_planned (RwDocument *self)
{
  return self->planned;
}

const GPtrArray *
rw_document_findings (RwDocument *self)
{
  return self->findings;
}

const RwFinding *
rw_document_finding_for (RwDocument *self, const char *id)
{
  for (guint i = 0; i < self->findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (self->findings, i);

      if (finding->reason != NULL)
        continue;
      if (finding->severity == RW_NOTE ? g_strcmp0 (finding->ids[0], id) == 0
                                       : g_strv_contains ((const char *const *) finding->ids, id))
        return finding;
    }
  return NULL;
}

RwStyle
rw_document_style (RwDocument *self)
{
  return self->style;
}

void
rw_document_set_units (RwDocument *self, RwUnits units)
{
  if (units == self->style.units)
    return;
  self->style.units = units;
  tell_change (self, RW_CHANGE_UNITS);
}

/* ---- changes ---- */

/* Makes next (taken over) the present project.  Changes of one parameter in a row merge into one step. */
static void
put (RwDocument *self, RwProject *next, RwParamId id)
{
  const RwParam *param = rw_param (id);

  rw_history_put (self->history, next, _(param->label), param->id);
  refresh (self, RW_CHANGE_DESIGN);
}

gboolean
rw_document_set_text (RwDocument *self, RwParamId id, const char *text, GError **error)
{
  g_autoptr (RwProject) next = rw_project_copy (rw_document_project (self));

  if (!rw_design_read (&next->design, id, text, self->style, error))
    return FALSE;
  if (!rw_design_same (&next->design, rw_document_design (self), id))
    put (self, g_steal_pointer (&next), id);
  return TRUE;
}

gboolean
rw_document_set_number (RwDocument *self, RwParamId id, double value, GError **error)
{
  g_autoptr (RwProject) next = rw_project_copy (rw_document_project (self));

  if (!rw_design_set (&next->design, id, value, error))
    return FALSE;
  if (!rw_design_same (&next->design, rw_document_design (self), id))
    put (self, g_steal_pointer (&next), id);
  return TRUE;
}

void
rw_document_put_back (RwDocument *self, RwParamId id, const RwDesign *from)
{
  g_autoptr (RwProject) next = rw_project_copy (rw_document_project (self));

  rw_design_copy (&next->design, from, id);
  if (!rw_design_same (&next->design, rw_document_design (self), id))
    put (self, g_steal_pointer (&next), id);
}

void
rw_document_settle (RwDocument *self)
{
  rw_history_barrier (self->history);
}

void
rw_document_begin_drag (RwDocument *self, const char *name)
{
  g_return_if_fail (!self->dragging);

  self->dragging = TRUE;
  self->drag_start = g_memdup2 (self->now, sizeof *self->now);
  rw_history_begin (self->history, name);
}

double
rw_document_drag_number (RwDocument *self, RwParamId id, double value)
{
  const RwParam *param = rw_param (id);
  double held = CLAMP (value, param->min, param->max);

  if (param->kind == RW_KIND_COUNT)
    held = CLAMP (round (held), param->min, param->max);
  rw_document_set_number (self, id, held, NULL);
  return held;
}

static void
leave_drag (RwDocument *self)
{
  self->dragging = FALSE;
  g_clear_pointer (&self->drag_start, g_free);
}

void
rw_document_end_drag (RwDocument *self)
{
  g_return_if_fail (self->dragging);

  leave_drag (self);
  note (self);
  rw_history_end (self->history);
  rw_history_barrier (self->history);
  rw_document_tell_saved_state (self);
}

void
rw_document_cancel_drag (RwDocument *self)
{
  g_return_if_fail (self->dragging);

  leave_drag (self);
  rw_history_cancel (self->history);
  refresh (self, RW_CHANGE_DESIGN);
}

const RwResult *
rw_document_drag_start (RwDocument *self)
{
  return self->drag_start;
}

void
rw_document_put_project (RwDocument *self, RwProject *project, const char *name)
{
  rw_history_barrier (self->history);
  rw_history_put (self->history, project, name, NULL);
  rw_history_barrier (self->history);
  refresh (self, RW_CHANGE_NUMBERS);
}

/* ---- back and forth ---- */

void
rw_document_undo (RwDocument *self)
{
  if (!self->dragging && rw_history_undo (self->history))
    refresh (self, RW_CHANGE_NUMBERS);
}

void
rw_document_redo (RwDocument *self)
{
  if (!self->dragging && rw_history_redo (self->history))
    refresh (self, RW_CHANGE_NUMBERS);
}

const char *
rw_document_undo_name (RwDocument *self)
{
  return rw_history_undo_name (self->history);
}

const char *
rw_document_redo_name (RwDocument *self)
{
  return rw_history_redo_name (self->history);
}

/* ---- the selection ---- */

void
rw_document_select (RwDocument *self, RwSubject subject)
{
  if (subject.param == self->selection.param && subject.slot == self->selection.slot)
    return;
  self->selection = subject;
  g_signal_emit (self, signals[SELECTED], 0);
}

RwSubject
rw_document_selection (RwDocument *self)
{
  return self->selection;
}
