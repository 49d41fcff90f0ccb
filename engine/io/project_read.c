#include "project_file.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#include "json_scan.h"
#include "project_member.h"

static gboolean
check_version (JsonObject *root, GError **error)
{
  JsonNode *node = json_object_get_member (root, "rimwright");
  gboolean is_number = rw_member_is_number (node) && json_node_get_value_type (node) == G_TYPE_INT64;
  gint64 version = is_number ? json_node_get_int (node) : 0;

  if (node == NULL)
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("This is no project: it has no member %s"),
                           "rimwright");
  if (version < 1)
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no version number"), "rimwright");
  if (version > RW_FILE_VERSION)
    {
      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_TOO_NEW,
                   _("The project is of version %d, and this program reads no later one than %d"),
                   (int) MIN (version, G_MAXINT), RW_FILE_VERSION);
      return FALSE;
    }
  return TRUE;
}

static gboolean
read_members (RwProject *project, JsonObject *root, GError **error)
{
  for (int i = 0; i < rw_members_count; i++)
    {
      JsonNode *node = json_object_get_member (root, rw_members[i].name);

      if (node != NULL && !rw_members[i].read (project, node, error))
        return FALSE;
    }
  return TRUE;
}

static gboolean
is_member (const char *name)
{
  for (int i = 0; i < rw_members_count; i++)
    if (strcmp (name, rw_members[i].name) == 0)
      return TRUE;
  return strcmp (name, "rimwright") == 0;
}

static void
keep_strangers (RwProject *project, JsonObject *root)
{
  JsonObjectIter iter;
  const char *name;
  JsonNode *value;

  json_object_iter_init_ordered (&iter, root);
  while (json_object_iter_next_ordered (&iter, &name, &value))
    if (!is_member (name))
      rw_member_keep (project, rw_unknown_path (name, NULL), value);
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
  if (!check_version (root, error) || !read_members (project, root, error))
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
      rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The text can't be read: %s"), reason->message);
      return NULL;
    }
  project = rw_project_new ();
  if (!read_root (project, json_parser_get_root (parser), error))
    return NULL;
  return g_steal_pointer (&project);
}
