#include "project_file.h"

#include <glib/gi18n-lib.h>
#include <json-glib/json-glib.h>
#include <string.h>

#include "json_scan.h"
#include "json_text.h"
#include "unknown.h"

/* format is still to be translated, and has one %s for what. */
static gboolean
fail (GError **error, RwFileError code, const char *format, const char *what)
{
  g_autofree char *shown = rw_file_quote (what);
  g_autofree char *message = g_strdup_printf (_(format), shown);

  g_set_error_literal (error, RW_FILE_ERROR, code, message);
  return FALSE;
}

/* An error of the engine as an error of the file, with the id that it is about. */
static gboolean
fail_value (GError **error, const char *id, const GError *reason)
{
  g_autofree char *sentence = rw_file_sentence (reason->message);

  g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_VALUE, "%s (%s)", sentence, id);
  return FALSE;
}

/* node may be NULL: there is no such member. */
static gboolean
is_of_type (JsonNode *node, GType type)
{
  return node != NULL && JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == type;
}

static gboolean
is_text (JsonNode *node)
{
  return is_of_type (node, G_TYPE_STRING);
}

static gboolean
is_number (JsonNode *node)
{
  return is_of_type (node, G_TYPE_INT64) || is_of_type (node, G_TYPE_DOUBLE);
}

/* Keeps a member that nobody here knows; takes the path over. */
static void
keep (RwProject *project, char *path, JsonNode *node)
{
  GString *text = g_string_new (NULL);

  rw_json_node (text, node);
  g_hash_table_insert (project->unknown, path, g_string_free (text, FALSE));
}

/* A member that is text; left alone where it is missing. */
static gboolean
read_text (JsonObject *object, const char *name, char **text, GError **error)
{
  JsonNode *node = json_object_get_member (object, name);

  if (node == NULL)
    return TRUE;
  if (!is_text (node))
    return fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no text"), name);
  g_free (*text);
  *text = g_strdup (json_node_get_string (node));
  return TRUE;
}

/* ---- parameters ---- */

/* A list as people write it, "20; 24; 24"; NULL where node is no list of numbers or texts. */
static char *
join_items (JsonNode *node, gboolean numbers)
{
  JsonArray *list = JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  GString *text;

  if (list == NULL)
    return NULL;
  text = g_string_new (NULL);
  for (guint i = 0; i < json_array_get_length (list); i++)
    {
      JsonNode *item = json_array_get_element (list, i);

      if (numbers ? !is_number (item) : !is_text (item) || strchr (json_node_get_string (item), ';') != NULL)
        {
          g_string_free (text, TRUE);
          return NULL;
        }
      g_string_append (text, i > 0 ? "; " : "");
      if (numbers)
        rw_json_number (text, json_node_get_double (item));
      else
        g_string_append (text, json_node_get_string (item));
    }
  return g_string_free (text, FALSE);
}

static gboolean
read_number (RwDesign *design, RwParamId id, JsonNode *node, GError **error)
{
  g_autoptr (GError) reason = NULL;

  if (!is_number (node))
    return fail (error, RW_FILE_ERROR_VALUE, N_("The value of %s is no number"), rw_param (id)->id);
  return rw_design_set (design, id, json_node_get_double (node), &reason)
         || fail_value (error, rw_param (id)->id, reason);
}

static gboolean
read_other (RwDesign *design, RwParamId id, JsonNode *node, GError **error)
{
  const RwParam *param = rw_param (id);
  g_autoptr (GError) reason = NULL;
  g_autofree char *text = NULL;

  switch (param->kind)
    {
    case RW_KIND_LENGTH_LIST:
      text = join_items (node, TRUE);
      if (text == NULL)
        return fail (error, RW_FILE_ERROR_VALUE, N_("The value of %s is no list of numbers"), param->id);
      break;
    case RW_KIND_WOOD_LIST:
    case RW_KIND_STRING_SET:
      text = join_items (node, FALSE);
      if (text == NULL)
        return fail (error, RW_FILE_ERROR_VALUE, N_("The value of %s is no list of texts"), param->id);
      break;
    default:
      text = is_text (node) ? g_strdup (json_node_get_string (node)) : NULL;
      if (text == NULL)
        return fail (error, RW_FILE_ERROR_VALUE, N_("The value of %s is no text"), param->id);
    }
  return rw_design_read (design, id, text, RW_STYLE_FILE, &reason) || fail_value (error, param->id, reason);
}

static gboolean
read_parameters (RwProject *project, JsonObject *root, GError **error)
{
  JsonNode *node = json_object_get_member (root, "parameters");
  JsonObjectIter iter;
  const char *name;
  JsonNode *value;

  if (node == NULL)
    return TRUE;
  if (!JSON_NODE_HOLDS_OBJECT (node))
    return fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no object"), "parameters");
  json_object_iter_init_ordered (&iter, json_node_get_object (node));
  while (json_object_iter_next_ordered (&iter, &name, &value))
    {
      int id = rw_param_find (name);

      if (id < 0)
        keep (project, rw_unknown_path ("parameters", name, NULL), value);
      else if (rw_param_is_number (rw_param ((RwParamId) id))
                 ? !read_number (&project->design, (RwParamId) id, value, error)
                 : !read_other (&project->design, (RwParamId) id, value, error))
        return FALSE;
    }
  return TRUE;
}

/* ---- measured entries ---- */

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

      if (!is_number (item))
        break;
      value = json_node_get_double (item);
      g_array_append_val (readings, value);
    }
  if (length > 0 && readings->len == length)
    return g_steal_pointer (&readings);
  fail (error, RW_FILE_ERROR_DAMAGED, N_("The readings of %s are no list of numbers"), id);
  return NULL;
}

static void
keep_members (RwProject *project, JsonObject *object, const char *id)
{
  static const char *const known[] = { "id", "readings", "date", "note", NULL };
  JsonObjectIter iter;
  const char *name;
  JsonNode *value;

  json_object_iter_init_ordered (&iter, object);
  while (json_object_iter_next_ordered (&iter, &name, &value))
    if (!g_strv_contains (known, name))
      keep (project, rw_unknown_path ("measured", id, name, NULL), value);
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
      || !read_text (object, "date", &date, error)
      || !read_text (object, "note", &note, error))
    return FALSE;
  if (rw_ledger_put (project->ledger, id, values, readings->len, date, note, &reason))
    keep_members (project, object, id);
  else if (g_error_matches (reason, RW_PARAM_ERROR, RW_PARAM_ERROR_UNKNOWN))
    keep (project, rw_unknown_path ("measured", id, NULL), node);
  else
    return fail_value (error, id, reason);
  return TRUE;
}

static gboolean
read_entry (RwProject *project, JsonNode *node, GHashTable *seen, GError **error)
{
  JsonObject *object = JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
  JsonNode *id_node = object != NULL ? json_object_get_member (object, "id") : NULL;
  const char *id;

  if (!is_text (id_node))
    return fail (error, RW_FILE_ERROR_DAMAGED, N_("An entry of %s has no id"), "measured");
  id = json_node_get_string (id_node);
  if (!g_hash_table_add (seen, g_strdup (id)))
    return fail (error, RW_FILE_ERROR_DAMAGED, N_("There are two measured entries for %s"), id);
  return put_entry (project, id, node, error);
}

static gboolean
read_measured (RwProject *project, JsonObject *root, GError **error)
{
  JsonNode *node = json_object_get_member (root, "measured");
  g_autoptr (GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  JsonArray *list;

  if (node == NULL)
    return TRUE;
  if (!JSON_NODE_HOLDS_ARRAY (node))
    return fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no list"), "measured");
  list = json_node_get_array (node);
  for (guint i = 0; i < json_array_get_length (list); i++)
    if (!read_entry (project, json_array_get_element (list, i), seen, error))
      return FALSE;
  return TRUE;
}

/* ---- the whole ---- */

static gboolean
check_version (JsonObject *root, GError **error)
{
  JsonNode *node = json_object_get_member (root, "rimwright");
  gint64 version = is_of_type (node, G_TYPE_INT64) ? json_node_get_int (node) : 0;

  if (node == NULL)
    return fail (error, RW_FILE_ERROR_DAMAGED, N_("This is no project: it has no member %s"), "rimwright");
  if (version < 1)
    return fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no version number"), "rimwright");
  if (version > RW_FILE_VERSION)
    {
      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_TOO_NEW,
                   _("The project is of version %d, and this program reads no later one than %d"),
                   (int) MIN (version, G_MAXINT), RW_FILE_VERSION);
      return FALSE;
    }
  return TRUE;
}

static void
keep_strangers (RwProject *project, JsonObject *root)
{
  static const char *const known[] = { "rimwright", "name", "parameters", "measured", "notes", NULL };
  JsonObjectIter iter;
  const char *name;
  JsonNode *value;

  json_object_iter_init_ordered (&iter, root);
  while (json_object_iter_next_ordered (&iter, &name, &value))
    if (!g_strv_contains (known, name))
      keep (project, rw_unknown_path (name, NULL), value);
}

static gboolean
read_root (RwProject *project, JsonNode *node, GError **error)
{
  JsonObject *root;

  if (!JSON_NODE_HOLDS_OBJECT (node))
    {
      g_set_error_literal (error, RW_FILE_ERROR, RW_FILE_ERROR_DAMAGED,
                           _("This is no project: it does not begin with a brace"));
      return FALSE;
    }
  root = json_node_get_object (node);
  if (!check_version (root, error)
      || !read_text (root, "name", &project->name, error)
      || !read_text (root, "notes", &project->notes, error)
      || !read_parameters (project, root, error)
      || !read_measured (project, root, error))
    return FALSE;
  keep_strangers (project, root);
  return TRUE;
}

RwProject *
rw_project_from_text (const char *text, gssize length, GError **error)
{
  gsize size = length >= 0 ? (gsize) length : strlen (text);
  g_autoptr (RwProject) project = NULL;
  g_autoptr (JsonParser) parser = NULL;
  g_autoptr (GError) reason = NULL;

  if (!rw_json_scan (text, size, error))
    return NULL;
  parser = json_parser_new_immutable ();
  if (!json_parser_load_from_data (parser, text, (gssize) size, &reason))
    {
      fail (error, RW_FILE_ERROR_DAMAGED, N_("The text can't be read: %s"), reason->message);
      return NULL;
    }
  project = rw_project_new ();
  if (!read_root (project, json_parser_get_root (parser), error))
    return NULL;
  return g_steal_pointer (&project);
}
