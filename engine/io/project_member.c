#include "project_member.h"

#include <glib/gi18n-lib.h>

#include "project/date.h"

/* ---- members that are plain text ---- */

static gboolean
read_plain (JsonNode *node, const char *name, char **text, GError **error)
{
  if (!rw_member_is_text (node))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no text"), name);
  g_free (*text);
  *text = g_strdup (json_node_get_string (node));
  return TRUE;
}

static void
write_plain (RwJsonWriter *writer, const char *name, const char *text)
{
  rw_json_name (writer, name);
  rw_json_string (writer->out, text != NULL ? text : "");
}

static gboolean
read_name (RwProject *project, JsonNode *node, GError **error)
{
  return read_plain (node, "name", &project->name, error);
}

static void
write_name (RwJsonWriter *writer, const RwProject *project)
{
  write_plain (writer, "name", project->name);
}

static gboolean
read_notes (RwProject *project, JsonNode *node, GError **error)
{
  return read_plain (node, "notes", &project->notes, error);
}

static void
write_notes (RwJsonWriter *writer, const RwProject *project)
{
  write_plain (writer, "notes", project->notes);
}

/* ---- the table ---- */

const RwMember rw_members[] = {
  { "name", read_name, write_name },
  { "parameters", rw_member_read_parameters, rw_member_write_parameters },
  { "measured", rw_member_read_measured, rw_member_write_measured },
  { "made", rw_member_read_made, rw_member_write_made },
  { "issued", rw_member_read_issued, rw_member_write_issued },
  { "shelf", rw_member_read_shelf, rw_member_write_shelf },
  { "accepted", rw_member_read_accepted, rw_member_write_accepted },
  { "notes", read_notes, write_notes },
};
const int rw_members_count = G_N_ELEMENTS (rw_members);

/* ---- reading ---- */

gboolean
rw_member_fail (GError **error, RwFileError code, const char *format, const char *what)
{
  g_autofree char *shown = rw_file_quote (what);
  g_autofree char *message = g_strdup_printf (_(format), shown);

  g_set_error_literal (error, RW_FILE_ERROR, code, message);
  return FALSE;
}

gboolean
rw_member_fail_value (GError **error, const char *id, const GError *reason)
{
  g_autofree char *sentence = rw_file_sentence (reason->message);

  g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_VALUE, "%s (%s)", sentence, id);
  return FALSE;
}

static gboolean
is_of_type (JsonNode *node, GType type)
{
  return node != NULL && JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == type;
}

gboolean
rw_member_is_text (JsonNode *node)
{
  return is_of_type (node, G_TYPE_STRING);
}

gboolean
rw_member_is_number (JsonNode *node)
{
  return is_of_type (node, G_TYPE_INT64) || is_of_type (node, G_TYPE_DOUBLE);
}

gboolean
rw_member_read_text (JsonObject *object, const char *name, char **text, GError **error)
{
  JsonNode *node = json_object_get_member (object, name);

  return node == NULL || read_plain (node, name, text, error);
}

char *
rw_member_read_date (JsonObject *object, const char *what, GError **error)
{
  g_autofree char *date = g_strdup ("");

  if (!rw_member_read_text (object, "date", &date, error))
    return NULL;
  if (*date == '\0' || rw_is_date (date))
    return g_steal_pointer (&date);
  rw_member_fail (error, RW_FILE_ERROR_VALUE, N_("The date of %s is not written as in 2026-05-04"), what);
  return NULL;
}

void
rw_member_keep (RwProject *project, char *path, JsonNode *node)
{
  GString *text = g_string_new (NULL);

  rw_json_node (text, node);
  g_hash_table_insert (project->unknown, path, g_string_free (text, FALSE));
}

void
rw_member_keep_others (RwProject *project, JsonObject *object, const char *path, const char *const *known)
{
  JsonObjectIter iter;
  const char *name;
  JsonNode *value;

  json_object_iter_init_ordered (&iter, object);
  while (json_object_iter_next_ordered (&iter, &name, &value))
    if (!g_strv_contains (known, name))
      {
        g_autofree char *last = rw_unknown_path (name, NULL);

        rw_member_keep (project, g_strconcat (path, last, NULL), value);
      }
}

/* ---- writing ---- */

void
rw_member_write_unknown (RwJsonWriter *writer, const RwProject *project, const char *path)
{
  g_autoptr (GPtrArray) below = rw_unknown_below (project->unknown, path);

  for (guint i = 0; i < below->len; i++)
    {
      const char *member = g_ptr_array_index (below, i);
      g_autofree char *name = rw_unknown_name (member);

      rw_json_name (writer, name);
      g_string_append (writer->out, g_hash_table_lookup (project->unknown, member));
    }
}

void
rw_member_write_strangers (RwJsonWriter *writer, const RwProject *project, const char *path)
{
  g_autoptr (GPtrArray) below = rw_unknown_below (project->unknown, path);

  for (guint i = 0; i < below->len; i++)
    {
      rw_json_next (writer);
      g_string_append (writer->out, g_hash_table_lookup (project->unknown, g_ptr_array_index (below, i)));
    }
}

void
rw_member_append_unknown (GString *out, const RwProject *project, const char *path)
{
  g_autoptr (GPtrArray) below = rw_unknown_below (project->unknown, path);

  for (guint i = 0; i < below->len; i++)
    {
      const char *member = g_ptr_array_index (below, i);
      g_autofree char *name = rw_unknown_name (member);

      g_string_append (out, ", ");
      rw_json_string (out, name);
      g_string_append_printf (out, ": %s", (const char *) g_hash_table_lookup (project->unknown, member));
    }
}

gboolean
rw_member_has_unknown (const RwProject *project, const char *path)
{
  g_autoptr (GPtrArray) below = rw_unknown_below (project->unknown, path);

  return below->len > 0;
}
