/* The member "measured": the ledger. */
#include "project_member.h"

#include <glib/gi18n-lib.h>

/* ---- reading ---- */

static GArray *
read_readings (JsonObject *object, const char *id, GError **error)
{
  JsonNode *node = json_object_get_member (object, "readings");
  JsonArray *list = node != NULL && JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  guint length = list != NULL ? json_array_get_length (list) : 0;
  g_autoptr (GArray) readings = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0; i < length; i++)
    {
      JsonNode *item = json_array_get_element (list, i);
      double value;

      if (!rw_member_is_number (item))
        break;
      value = json_node_get_double (item);
      g_array_append_val (readings, value);
    }
  if (length > 0 && readings->len == length)
    return g_steal_pointer (&readings);
  rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The readings of %s are no list of numbers"), id);
  return NULL;
}

static void
keep_members (RwProject *project, JsonObject *object, const char *id)
{
  static const char *const known[] = { "id", "readings", "date", "note", NULL };
  g_autofree char *path = rw_unknown_path ("measured", id, NULL);

  rw_member_keep_others (project, object, path, known);
}

/* Puts an entry in; one whose id is unknown is kept as it is. */
static gboolean
put_entry (RwProject *project, const char *id, JsonNode *node, GError **error)
{
  JsonObject *object = json_node_get_object (node);
  g_autofree char *date = NULL, *note = NULL;
  g_autoptr (GError) reason = NULL;
  g_autoptr (GArray) readings = read_readings (object, id, error);
  const double *values = readings != NULL ? (const double *) (const void *) readings->data : NULL;

  if (values == NULL
      || !rw_member_read_text (object, "date", &date, error)
      || !rw_member_read_text (object, "note", &note, error))
    return FALSE;
  if (rw_ledger_put (project->ledger, id, values, readings->len, date, note, &reason))
    keep_members (project, object, id);
  else if (g_error_matches (reason, RW_PARAM_ERROR, RW_PARAM_ERROR_UNKNOWN))
    rw_member_keep (project, rw_unknown_path ("measured", id, NULL), node);
  else
    return rw_member_fail_value (error, id, reason);
  return TRUE;
}

static gboolean
read_entry (RwProject *project, JsonNode *node, GHashTable *seen, GError **error)
{
  JsonObject *object = JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
  JsonNode *id_node = object != NULL ? json_object_get_member (object, "id") : NULL;
  const char *id;

  if (!rw_member_is_text (id_node))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("An entry of %s has no id"), "measured");
  id = json_node_get_string (id_node);
  if (!g_hash_table_add (seen, g_strdup (id)))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("There are two measured entries for %s"), id);
  return put_entry (project, id, node, error);
}

gboolean
rw_member_read_measured (RwProject *project, JsonNode *node, GError **error)
{
  g_autoptr (GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  JsonArray *list;

  if (!JSON_NODE_HOLDS_ARRAY (node))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no list"), "measured");
  list = json_node_get_array (node);
  for (guint i = 0; i < json_array_get_length (list); i++)
    if (!read_entry (project, json_array_get_element (list, i), seen, error))
      return FALSE;
  return TRUE;
}

/* ---- writing ---- */

static void
append_entry (GString *out, const RwEntry *entry, const RwProject *project)
{
  g_autofree char *path = rw_unknown_path ("measured", entry->id, NULL);

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
  rw_member_append_unknown (out, project, path);
  g_string_append (out, " }");
}

void
rw_member_write_measured (RwJsonWriter *writer, const RwProject *project)
{
  rw_json_name (writer, "measured");
  rw_json_begin (writer, '[');
  for (guint i = 0; i < project->ledger->entries->len; i++)
    {
      rw_json_next (writer);
      append_entry (writer->out, g_ptr_array_index (project->ledger->entries, i), project);
    }
  rw_member_write_strangers (writer, project, "/measured");
  rw_json_end (writer, ']');
}
