#include "project_file.h"

#include "json_text.h"
#include "unknown.h"

/* Where the writing is: out, and whether the present list or object has an item yet. */
typedef struct
{
  GString *out;
  int      indent;
  gboolean first;
} Writer;

static void
begin (Writer *writer, const char *mark)
{
  g_string_append (writer->out, mark);
  writer->indent += 2;
  writer->first = TRUE;
}

static void
next (Writer *writer)
{
  g_string_append_printf (writer->out, "%s\n%*s", writer->first ? "" : ",", writer->indent, "");
  writer->first = FALSE;
}

static void
end (Writer *writer, const char *mark)
{
  writer->indent -= 2;
  if (!writer->first)
    g_string_append_printf (writer->out, "\n%*s", writer->indent, "");
  g_string_append (writer->out, mark);
  writer->first = FALSE;
}

static void
name (Writer *writer, const char *text)
{
  next (writer);
  rw_json_string (writer->out, text);
  g_string_append (writer->out, ": ");
}

static void
unknown_members (Writer *writer, const RwProject *project, const char *path)
{
  g_autoptr (GPtrArray) below = rw_unknown_below (project->unknown, path);

  for (guint i = 0; i < below->len; i++)
    {
      const char *member = g_ptr_array_index (below, i);
      g_autofree char *member_name = rw_unknown_name (member);

      name (writer, member_name);
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
parameters (Writer *writer, const RwProject *project)
{
  begin (writer, "{");
  for (int id = 0; id < RW_PARAM_COUNT; id++)
    {
      name (writer, rw_param ((RwParamId) id)->id);
      append_parameter (writer->out, &project->design, (RwParamId) id);
    }
  unknown_members (writer, project, "/parameters");
  end (writer, "}");
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
measured (Writer *writer, const RwProject *project)
{
  g_autoptr (GPtrArray) strangers = rw_unknown_below (project->unknown, "/measured");

  begin (writer, "[");
  for (guint i = 0; i < project->ledger->entries->len; i++)
    {
      next (writer);
      append_entry (writer->out, g_ptr_array_index (project->ledger->entries, i), project->unknown);
    }
  for (guint i = 0; i < strangers->len; i++)
    {
      next (writer);
      g_string_append (writer->out, g_hash_table_lookup (project->unknown, g_ptr_array_index (strangers, i)));
    }
  end (writer, "]");
}

char *
rw_project_to_text (const RwProject *project)
{
  Writer writer = { g_string_new (NULL), 0, TRUE };

  begin (&writer, "{");
  name (&writer, "rimwright");
  g_string_append_printf (writer.out, "%d", RW_FILE_VERSION);
  name (&writer, "name");
  rw_json_string (writer.out, project->name != NULL ? project->name : "");
  name (&writer, "parameters");
  parameters (&writer, project);
  name (&writer, "measured");
  measured (&writer, project);
  name (&writer, "notes");
  rw_json_string (writer.out, project->notes != NULL ? project->notes : "");
  unknown_members (&writer, project, "");
  end (&writer, "}");
  g_string_append_c (writer.out, '\n');
  return g_string_free (writer.out, FALSE);
}
