namespace Barshow.Web.Hosting;

/// <summary>What every answer tells the browser: nothing from elsewhere, no inline script, no frame.</summary>
public static class PageHeaders
{
    /// <summary>The headers of every answer.</summary>
    /// <remarks>Inline styles stay allowed: MudBlazor places its popovers and its theme with them.</remarks>
    public static HeaderPolicyCollection Policy() => new HeaderPolicyCollection()
        .AddFrameOptionsDeny()
        .AddContentTypeOptionsNoSniff()
        .AddReferrerPolicyNoReferrer()
        .AddCrossOriginOpenerPolicy(policy => policy.SameOrigin())
        .AddCrossOriginResourcePolicy(policy => policy.SameOrigin())
        .AddContentSecurityPolicy(policy =>
        {
            policy.AddDefaultSrc().Self();
            policy.AddBaseUri().Self();
            policy.AddObjectSrc().None();
            policy.AddFrameAncestors().None();
            policy.AddFormAction().Self();
            policy.AddScriptSrc().Self();
            policy.AddStyleSrc().Self().UnsafeInline();
            policy.AddImgSrc().Self().Data();
            policy.AddFontSrc().Self();
            policy.AddConnectSrc().Self();
        });
}
