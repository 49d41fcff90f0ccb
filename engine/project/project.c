#include "project.h"

static GHashTable *
table_new (void)
{
  return g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
}

static GHashTable *
table_copy (GHashTable *table)
{
  GHashTable *copy = table_new ();
  GHashTableIter iter;
  gpointer key, value;

  g_hash_table_iter_init (&iter, table);
  while (g_hash_table_iter_next (&iter, &key, &value))
    g_hash_table_insert (copy, g_strdup (key), g_strdup (value));
  return copy;
}

static gboolean
table_equal (GHashTable *a, GHashTable *b)
{
  GHashTableIter iter;
  gpointer key, value;

  if (g_hash_table_size (a) != g_hash_table_size (b))
    return FALSE;
  g_hash_table_iter_init (&iter, a);
  while (g_hash_table_iter_next (&iter, &key, &value))
    if (g_strcmp0 (value, g_hash_table_lookup (b, key)) != 0)
      return FALSE;
  return TRUE;
}

RwProject *
rw_project_new (void)
{
  RwProject *project = g_new (RwProject, 1);

  project->name = g_strdup ("");
  project->notes = g_strdup ("");
  rw_design_init (&project->design);
  project->ledger = rw_ledger_new ();
  project->made = rw_made_new ();
  project->issued = rw_issued_new ();
  project->shelf = rw_shelf_new ();
  project->accepted = rw_accepted_new ();
  project->unknown = table_new ();
  return project;
}

RwProject *
rw_project_copy (const RwProject *project)
{
  RwProject *copy = g_new (RwProject, 1);

  copy->name = g_strdup (project->name);
  copy->notes = g_strdup (project->notes);
  copy->design = project->design;
  copy->ledger = rw_ledger_copy (project->ledger);
  copy->made = rw_made_copy (project->made);
  copy->issued = rw_issued_copy (project->issued);
  copy->shelf = rw_shelf_copy (project->shelf);
  copy->accepted = rw_accepted_copy (project->accepted);
  copy->unknown = table_copy (project->unknown);
  return copy;
}

gboolean
rw_project_equal (const RwProject *a, const RwProject *b)
{
  return g_strcmp0 (a->name, b->name) == 0
         && g_strcmp0 (a->notes, b->notes) == 0
         && rw_design_equal (&a->design, &b->design)
         && rw_ledger_equal (a->ledger, b->ledger)
         && rw_made_equal (a->made, b->made)
         && rw_issued_equal (a->issued, b->issued)
         && rw_shelf_equal (a->shelf, b->shelf)
         && rw_accepted_equal (a->accepted, b->accepted)
         && table_equal (a->unknown, b->unknown);
}

void
rw_project_free (RwProject *project)
{
  if (project == NULL)
    return;
  g_free (project->name);
  g_free (project->notes);
  rw_ledger_free (project->ledger);
  rw_made_free (project->made);
  rw_issued_free (project->issued);
  rw_shelf_free (project->shelf);
  rw_accepted_free (project->accepted);
  g_hash_table_unref (project->unknown);
  g_free (project);
}

void
rw_project_measured (const RwProject *project, RwMeasured *measured)
{
  rw_measured_init (measured);
  rw_made_fill (project->made, measured);
  rw_ledger_fill (project->ledger, measured);
}
