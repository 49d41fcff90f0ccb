#include "project_file.h"

#include "json_writer.h"
#include "unknown.h"

static void
unknown_members (RwJsonWriter *writer, const RwProject *project, const char *path)
{
  g_autoptr (GPtrArray) below = rw_unknown_below (project->unknown, path);

  for (guint i = 0; i < below->len; i++)
    {
      const char *member = g_ptr_array_index (below, i);
      g_autofree char *member_name = rw_unknown_name (member);

      rw_json_name (writer, member_name);
      g_string_append (writer->out, g_hash_table_lookup (project->unknown, member));
    }
}

/* ---- parameters ---- */

/* A list as people write it, "20; 24; 24", becomes a list of numbers or texts. */
static void
append_items (GString *out, const char *text, gboolean numbers)
{
  g_auto (GStrv) items = g_strsplit (text, ";", -1);

  g_string_append (out, "[ ");
  for (int i = 0; items[i] != NULL; i++)
    {
      g_string_append (out, i > 0 ? ", " : "");
      if (numbers)
        g_string_append (out, g_strstrip (items[i]));
      else
        rw_json_string (out, g_strstrip (items[i]));
    }
  g_string_append (out, " ]");
}

static void
append_parameter (GString *out, const RwDesign *design, RwParamId id)
{
  g_autofree char *text = NULL;

  if (rw_param_is_number (rw_param (id)))
    {
      rw_json_number (out, rw_design_get (design, id));
      return;
    }
  text = rw_design_write (design, id, RW_STYLE_FILE);
  switch (rw_param (id)->kind)
    {
    case RW_KIND_LENGTH_LIST:
      append_items (out, text, TRUE);
      break;
    case RW_KIND_WOOD_LIST:
    case RW_KIND_STRING_SET:
      append_items (out, text, FALSE);
      break;
    default:
      rw_json_string (out, text);
    }
}

static void
parameters (RwJsonWriter *writer, const RwProject *project)
{
  rw_json_begin (writer, '{');
  for (int id = 0; id < RW_PARAM_COUNT; id++)
    {
      rw_json_name (writer, rw_param ((RwParamId) id)->id);
      append_parameter (writer->out, &project->design, (RwParamId) id);
    }
  unknown_members (writer, project, "/parameters");
  rw_json_end (writer, '}');
}

/* ---- measured entries ---- */

static void
append_entry (GString *out, const RwEntry *entry, GHashTable *unknown)
{
  g_autofree char *path = rw_unknown_path ("measured", entry->id, NULL);
  g_autoptr (GPtrArray) below = rw_unknown_below (unknown, path);

  g_string_append (out, "{ \"id\": ");
  rw_json_string (out, entry->id);
  g_string_append (out, ", \"readings\": [");
  for (guint i = 0; i < entry->readings->len; i++)
    {
      g_string_append (out, i > 0 ? ", " : " ");
      rw_json_number (out, g_array_index (entry->readings, double, i));
    }
  g_string_append (out, " ], \"date\": ");
  rw_json_string (out, entry->date);
  g_string_append (out, ", \"note\": ");
  rw_json_string (out, entry->note);
  for (guint i = 0; i < below->len; i++)
    {
      const char *member = g_ptr_array_index (below, i);
      g_autofree char *member_name = rw_unknown_name (member);

      g_string_append (out, ", ");
      rw_json_string (out, member_name);
      g_string_append_printf (out, ": %s", (const char *) g_hash_table_lookup (unknown, member));
    }
  g_string_append (out, " }");
}

static void
measured (RwJsonWriter *writer, const RwProject *project)
{
  g_autoptr (GPtrArray) strangers = rw_unknown_below (project->unknown, "/measured");

  rw_json_begin (writer, '[');
  for (guint i = 0; i < project->ledger->entries->len; i++)
    {
      rw_json_next (writer);
      append_entry (writer->out, g_ptr_array_index (project->ledger->entries, i), project->unknown);
    }
  for (guint i = 0; i < strangers->len; i++)
    {
      rw_json_next (writer);
      g_string_append (writer->out, g_hash_table_lookup (project->unknown, g_ptr_array_index (strangers, i)));
    }
  rw_json_end (writer, ']');
}

char *
rw_project_to_text (const RwProject *project)
{
  RwJsonWriter writer = { g_string_new (NULL), 0, TRUE };

  rw_json_begin (&writer, '{');
  rw_json_name (&writer, "rimwright");
  g_string_append_printf (writer.out, "%d", RW_FILE_VERSION);
  rw_json_name (&writer, "name");
  rw_json_string (writer.out, project->name != NULL ? project->name : "");
  rw_json_name (&writer, "parameters");
  parameters (&writer, project);
  rw_json_name (&writer, "measured");
  measured (&writer, project);
  rw_json_name (&writer, "notes");
  rw_json_string (writer.out, project->notes != NULL ? project->notes : "");
  unknown_members (&writer, project, "");
  rw_json_end (&writer, '}');
  g_string_append_c (writer.out, '\n');
  return g_string_free (writer.out, FALSE);
}
