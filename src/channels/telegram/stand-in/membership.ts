import type { ChatMember, ChatMemberAdministrator, User } from "grammy/types";

/** Rights of an administrator that a support bot may or may not have been given. */
export interface BotRights {
  readonly can_manage_topics?: boolean;
  readonly can_pin_messages?: boolean;
  readonly can_delete_messages?: boolean;
}

export const member = (user: User): ChatMember => ({ status: "member", user });
export const left = (user: User): ChatMember => ({ status: "left", user });
export const kicked = (user: User): ChatMember => ({ status: "kicked", user, until_date: 0 });
export const owner = (user: User): ChatMember => ({ status: "creator", user, is_anonymous: false });

/** An administrator; rights not named are given. */
export function administrator(user: User, rights: BotRights = {}): ChatMemberAdministrator {
  return {
    status: "administrator",
    user,
    can_be_edited: false,
    is_anonymous: false,
    can_manage_chat: true,
    can_delete_messages: rights.can_delete_messages ?? true,
    can_manage_video_chats: false,
    can_restrict_members: false,
    can_promote_members: false,
    can_change_info: false,
    can_invite_users: true,
    can_post_stories: false,
    can_edit_stories: false,
    can_delete_stories: false,
    can_pin_messages: rights.can_pin_messages ?? true,
    can_manage_topics: rights.can_manage_topics ?? true,
    can_send_welcome_messages: false,
  };
}
