using Google.Api;
using Google.Protobuf.Reflection;

namespace SwapSolver.House.Tests;

/// <summary>The contract as a descriptor set.</summary>
internal static class DescribedContract
{
    private const string Resource = "swapsolver.protoset";

    /// <summary>As the protos have it now.</summary>
    public static FileDescriptorSet Now { get; } = Read(typeof(V1.Formula).Assembly.GetManifestResourceStream(Resource)!);

    /// <summary>As it was last released.</summary>
    public static FileDescriptorSet Released { get; } = Read(File.OpenRead(Path.Combine(SourceTree.Root, "protos", "released.protoset")));

    private static FileDescriptorSet Read(Stream stream)
    {
        using (stream)
        {
            return FileDescriptorSet.Parser.WithExtensionRegistry([AnnotationsExtensions.Http]).ParseFrom(stream);
        }
    }
}
